import { betaShare } from './beta-share.ts';

/**
 * Chance that Student's t exceeds a value, `pt(value, freedom, lower.tail = FALSE)` in R.
 *
 * @param value any number
 * @param freedom degrees of freedom, above 0
 * @throws DomainError as `betaShare`
 */
export function studentTTail(value: number, freedom: number): number {
  const square = value * value;
  const outer = betaShare(freedom / (freedom + square), freedom / 2, 0.5, square / (freedom + square)) / 2;
  return value >= 0 ? outer : 1 - outer;
}

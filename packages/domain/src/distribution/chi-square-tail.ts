import { gammaTail } from './gamma-tail.ts';

/**
 * Chance that a chi-square variable exceeds a value, `pchisq(value, freedom, lower.tail = FALSE)` in R.
 *
 * @param value at least 0
 * @param freedom degrees of freedom, above 0
 * @throws DomainError as `gammaTail`
 */
export const chiSquareTail = (value: number, freedom: number): number => gammaTail(value / 2, freedom / 2);

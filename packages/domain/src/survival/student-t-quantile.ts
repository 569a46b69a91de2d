import { isCount } from '../count.ts';
import { studentTBeyond } from '../distribution/student-t-quantile.ts';
import { DomainError } from '../errors.ts';

/**
 * Quantile of Student's t: the point below which a share `probability` of the distribution lies.
 *
 * Degrees of freedom are whole here (donors - 1), and for those the
 * distribution function is a finite sum in the angle atan(t / sqrt(freedom)).
 * That is exact and short; halving the angle's interval cannot run astray as
 * Newton can. In far tails and for many donors, where the sum loses digits or
 * grows long, the incomplete beta function is asked.
 *
 * @param probability between 0 and 1, both excluded; 0.975 for two-sided 95 %
 * @param freedom degrees of freedom, a whole number, at least 1
 * @returns t, unitless; relative error about 1e-12
 * @throws DomainError `survival/not-a-level` for a probability outside (0, 1)
 * @throws DomainError `survival/not-a-count` when freedom is not a whole number of at least 1
 *
 * Source: Abramowitz M, Stegun IA (1964) Handbook of Mathematical Functions,
 * 26.7.3 (odd) and 26.7.4 (even degrees of freedom); formulas from memory.
 */
export function studentTQuantile(probability: number, freedom: number): number {
  if (!(probability > 0 && probability < 1)) {
    throw new DomainError('survival/not-a-level', 'a probability lies between 0 and 1', { probability });
  }
  if (!isCount(freedom) || freedom === 0) {
    throw new DomainError('survival/not-a-count', 'degrees of freedom are a whole number of at least 1', { freedom });
  }
  if (probability === 0.5) return 0;
  if (probability < FAR_TAIL || probability > 1 - FAR_TAIL || freedom > MANY) {
    const beyond = studentTBeyond(Math.min(probability, 1 - probability), freedom);
    if (beyond === Number.POSITIVE_INFINITY) throw new DomainError('survival/not-a-level', 'that point lies beyond all numbers', { probability });
    return probability < 0.5 ? -beyond : beyond;
  }
  if (probability < 0.5) return -studentTQuantile(1 - probability, freedom);

  return Math.sqrt(freedom) * Math.tan(angleHolding(2 * probability - 1, freedom));
}

const FAR_TAIL = 1e-4;
const MANY = 1_000;

/** The angle within which, on both sides of 0, a share `wanted` of the distribution lies. */
function angleHolding(wanted: number, freedom: number): number {
  let below = 0;
  let above = Math.PI / 2;
  let middle = above / 2;
  // Ends when no double is left between the two: about sixty halvings.
  while (middle > below && middle < above) {
    if (shareWithin(middle, freedom) < wanted) below = middle;
    else above = middle;
    middle = (below + above) / 2;
  }
  return middle;
}

/** Share of the distribution between minus and plus `angle`, A(t | freedom) of the source. */
function shareWithin(angle: number, freedom: number): number {
  const cosine = Math.cos(angle);
  const isOdd = freedom % 2 === 1;
  let term = isOdd ? cosine : 1;
  let sum = 0;
  for (let power = isOdd ? 1 : 0; power <= freedom - 2; power += 2) {
    sum += term;
    term *= (cosine * cosine * (power + 1)) / (power + 2);
  }
  const series = Math.sin(angle) * sum;
  return isOdd ? (2 / Math.PI) * (angle + series) : series;
}

import type { ShareDifference } from '../proportion/newcombe-difference.ts';
import { type DonorOutcome, donorRatioInterval } from '../survival/donor-ratio-interval.ts';
import { studentTQuantile } from '../survival/student-t-quantile.ts';

/**
 * Difference of the shares of two groups of donor trees, with trees as what was tried: for groups that share no tree.
 *
 * Each share's standard error comes from how its trees differ; Student's t pays for having few of them.
 *
 * @param first outcomes, one a donor tree; those without plants are left out
 * @param confidence two-sided, between 0 and 1, both excluded
 * @throws DomainError as `donorRatioInterval`: `survival/too-few-donors` below five trees in either group,
 *   `survival/donors-all-alike` where a group's trees all did the same
 *
 * Source: `donorRatioInterval` for each share; degrees of freedom by Welch BL (1947) Biometrika 34:28-35, rounded down; from memory.
 */
export function donorDifference(first: readonly DonorOutcome[], second: readonly DonorOutcome[], confidence = 0.95): ShareDifference {
  const [one, two] = [donorRatioInterval(first, confidence), donorRatioInterval(second, confidence)];
  const [a, b] = [one.standardError ** 2, two.standardError ** 2];
  const freedom = Math.max(1, Math.floor((a + b) ** 2 / (a ** 2 / (one.donors - 1) + b ** 2 / (two.donors - 1))));
  const difference = one.rate - two.rate;
  const half = studentTQuantile((1 + confidence) / 2, freedom) * Math.sqrt(a + b);
  return { difference, lower: Math.max(-1, difference - half), upper: Math.min(1, difference + half) };
}

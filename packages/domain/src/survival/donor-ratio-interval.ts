import { isCount } from '../count.ts';
import { DomainError } from '../errors.ts';
import type { Interval } from './interval.ts';
import { studentTQuantile } from './student-t-quantile.ts';

/** Fewer donors than this say too little about how donors differ. A working rule, not a theorem. */
export const DONORS_NEEDED = 5;

/** What became of one donor's plants. Whole numbers, 0 <= successes <= plants. */
export interface DonorOutcome {
  readonly successes: number;
  readonly plants: number;
}

export interface DonorRatioInterval extends Interval {
  /** Share of all plants together: large donors count for more. */
  readonly rate: number;
  /** Standard error of `rate`, a share. */
  readonly standardError: number;
  /** Variance by donors over variance if plants were independent: 4 means plants tell a quarter as much as they seem to. */
  readonly designEffect: number;
  /** Donors with at least one plant. */
  readonly donors: number;
}

/**
 * Interval for a survival share with donors, not plants, as the things sampled.
 *
 * Cuttings of one tree root or fail together, so 200 cuttings of 5 trees are
 * nearer to 5 observations than to 200. The share is a ratio of two sums
 * (donors bring unequal numbers), its variance comes from how far each donor
 * lies from it, and Student's t on donors - 1 pays for having few donors.
 * The two limits are cut off at 0 and 1.
 *
 * @param outcomes one for each donor (each clone group, where donors turned out to be one clone);
 *   donors without plants are left out
 * @param confidence two-sided, between 0 and 1, both excluded
 * @throws DomainError `survival/not-a-count` for negative, broken or reversed counts
 * @throws DomainError `survival/too-few-donors` below five donors with plants: show the best and the worst instead
 * @throws DomainError `survival/donors-all-alike` when every donor has the same share: the spread
 *   cannot be judged, and the interval would be a point
 * @throws DomainError `survival/not-a-level` for a confidence outside (0, 1)
 *
 * Source: Cochran WG (1977) Sampling Techniques, 3rd ed., section 2.11 (ratio
 * estimator) and 9.2 (units of unequal size), without the finite population correction; from memory.
 */
export function donorRatioInterval(outcomes: readonly DonorOutcome[], confidence = 0.95): DonorRatioInterval {
  if (!(confidence > 0 && confidence < 1)) {
    throw new DomainError('survival/not-a-level', 'a confidence lies between 0 and 1', { confidence });
  }
  for (const { successes, plants } of outcomes) refuseUnlessOutcome(successes, plants);

  const present = outcomes.filter(({ plants }) => plants > 0);
  const donors = present.length;
  if (donors < DONORS_NEEDED) {
    throw new DomainError('survival/too-few-donors', `an interval by donors needs ${DONORS_NEEDED} donors with plants`, {
      donors,
      needed: DONORS_NEEDED,
    });
  }
  const plants = present.reduce((sum, donor) => sum + donor.plants, 0);
  const rate = present.reduce((sum, donor) => sum + donor.successes, 0) / plants;
  if (donorsAreAlike(present)) {
    throw new DomainError('survival/donors-all-alike', 'every donor has the same share, so their spread is unknown', {
      donors,
      rate,
    });
  }

  const squares = present.reduce((sum, donor) => sum + (donor.successes - rate * donor.plants) ** 2, 0);
  const variance = ((donors / (donors - 1)) * squares) / plants ** 2;
  const standardError = Math.sqrt(variance);
  const halfWidth = studentTQuantile((1 + confidence) / 2, donors - 1) * standardError;
  return {
    rate,
    lower: Math.max(0, rate - halfWidth),
    upper: Math.min(1, rate + halfWidth),
    standardError,
    designEffect: variance / ((rate * (1 - rate)) / plants),
    donors,
  };
}

/** Whether all donors have exactly the same share; asked in whole numbers, since thirds do not survive rounding. */
export function donorsAreAlike(outcomes: readonly DonorOutcome[]): boolean {
  const [first] = outcomes;
  return outcomes.every((donor) => first === undefined || donor.successes * first.plants === first.successes * donor.plants);
}

/** @throws DomainError `survival/not-a-count` for negative, broken or reversed counts */
export function refuseUnlessOutcome(successes: number, plants: number): void {
  if (!isCount(successes) || !isCount(plants) || successes > plants) {
    throw new DomainError('survival/not-a-count', 'both must be whole numbers, successes at most plants', {
      successes,
      plants,
    });
  }
}

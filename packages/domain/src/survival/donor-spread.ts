import {
  DONORS_NEEDED,
  type DonorOutcome,
  donorRatioInterval,
  type DonorRatioInterval,
  donorsAreAlike,
  refuseUnlessOutcome,
} from './donor-ratio-interval.ts';

export interface DonorRate {
  readonly donorId: string;
  readonly successes: number;
  readonly plants: number;
  /** A share. */
  readonly rate: number;
}

/** How donors differ: an interval where it can be had, else the two ends of what was seen. */
export type DonorSpread =
  | ({ readonly kind: 'interval' } & DonorRatioInterval)
  | {
      readonly kind: 'best-and-worst';
      readonly because: 'few-donors' | 'donors-all-alike';
      readonly donors: number;
      readonly best: DonorRate;
      readonly worst: DonorRate;
    };

/**
 * The interval by donors; or the best and the worst donor, where there are
 * fewer than five or all have the same share.
 *
 * Of donors with equal shares the one with more plants is named, then the
 * first by id, so that the same numbers always name the same donor.
 *
 * @param outcomes by donor (clone group) id
 * @returns nothing when no donor has a plant
 * @throws DomainError `survival/not-a-count` for negative, broken or reversed counts
 */
export function donorSpread(outcomes: ReadonlyMap<string, DonorOutcome>): DonorSpread | undefined {
  for (const { successes, plants } of outcomes.values()) refuseUnlessOutcome(successes, plants);
  const present = [...outcomes].filter(([, { plants }]) => plants > 0);
  const counts = present.map(([, outcome]) => outcome);
  const isFew = present.length < DONORS_NEEDED;
  if (!isFew && !donorsAreAlike(counts)) return { kind: 'interval', ...donorRatioInterval(counts) };

  const rates = present.map(([donorId, { successes, plants }]) => ({ donorId, successes, plants, rate: successes / plants }));
  const best = firstOf(rates, (a, b) => b.rate - a.rate);
  const worst = firstOf(rates, (a, b) => a.rate - b.rate);
  if (best === undefined || worst === undefined) return undefined;
  return { kind: 'best-and-worst', because: isFew ? 'few-donors' : 'donors-all-alike', donors: rates.length, best, worst };
}

function firstOf(rates: readonly DonorRate[], byRate: (a: DonorRate, b: DonorRate) => number): DonorRate | undefined {
  return rates.toSorted((a, b) => byRate(a, b) || b.plants - a.plants || (a.donorId < b.donorId ? -1 : 1))[0];
}

import { normalQuantile } from '../distribution/normal.ts';
import { DomainError } from '../errors.ts';
import { newcombeDifference, type ShareDifference } from '../proportion/newcombe-difference.ts';
import { refuseUnlessConfidence } from '../proportion/outcome.ts';
import { DONORS_NEEDED } from '../survival/donor-ratio-interval.ts';
import { studentTQuantile } from '../survival/student-t-quantile.ts';
import { refuseUnlessCounts, tells, type TwoByTwo } from './two-by-two.ts';

export interface CommonDifference extends ShareDifference {
  /** What the limits take for tried: each plant by itself, or the strata (donor trees). The wider of the two. */
  readonly by: 'plants' | 'strata';
  /** Strata in which both groups were there. */
  readonly strata: number;
}

/**
 * How many more of a hundred did it in the first group than in the second, within strata (donor trees), all added up.
 *
 * Its sign is that of the Cochran-Mantel-Haenszel test. With five strata or more there are limits also from how
 * the strata differ: a recipe that suits some trees and not others is less sure than its plants make it look.
 * The wider limits are told. Where every plant of one group did it and none of the other, the first limits would be a
 * point, so Newcombe's of all plants stand in.
 *
 * @param strata one table a stratum, whole numbers of plants
 * @param confidence two-sided, between 0 and 1, both excluded
 * @throws DomainError `survival/not-a-count`, `survival/not-a-level`; `comparison/nothing-to-compare` when no stratum tells anything
 *
 * Source: Greenland S, Robins JM (1985) Biometrics 41:55-68 (estimate); Sato T (1989) Biometrics 45:1323-1324 (variance, right for many
 * small strata and for few large ones); limits by strata as a ratio of two sums, Cochran WG (1977) 2.11; from memory.
 */
export function commonDifference(strata: readonly TwoByTwo[], confidence = 0.95): CommonDifference {
  strata.forEach(refuseUnlessCounts);
  refuseUnlessConfidence(confidence);
  if (!strata.some(tells)) throw new DomainError('comparison/nothing-to-compare', 'in no stratum were both groups there with both ends');

  const withBoth = strata.filter(({ first, second }) => first.yes + first.no > 0 && second.yes + second.no > 0);
  const parts = withBoth.map(partOf);
  const weight = sumOf(parts, (part) => part.weight);
  const difference = sumOf(parts, (part) => part.gap) / weight;
  const level = (1 + confidence) / 2;
  const variance = (difference * sumOf(parts, (part) => part.along) + sumOf(parts, (part) => part.against)) / weight ** 2;
  const plain = variance > 1e-12 ? around(difference, normalQuantile(level) * Math.sqrt(variance)) : pooled(withBoth, level);
  const byStrata = parts.length < DONORS_NEEDED ? undefined : around(difference, studentTQuantile(level, parts.length - 1) * strataError(parts, difference, weight));
  const isWider = byStrata !== undefined && byStrata.upper - byStrata.lower > plain.upper - plain.lower;
  return { difference, ...(isWider ? byStrata : plain), by: isWider ? 'strata' : 'plants', strata: parts.length };
}

interface Part {
  readonly gap: number;
  readonly weight: number;
  readonly along: number;
  readonly against: number;
}

/** Sato's P and Q are `along` and `against`. */
function partOf({ first, second }: TwoByTwo): Part {
  const [m, n] = [first.yes + first.no, second.yes + second.no];
  const all = m + n;
  return {
    gap: (first.yes / all) * n - (second.yes / all) * m,
    weight: (m / all) * n,
    along: (m / all) ** 2 * second.yes - (n / all) ** 2 * first.yes + ((m / all) * (n / all) * (n - m)) / 2,
    against: ((first.yes / all) * second.no + (second.yes / all) * first.no) / 2,
  };
}

function strataError(parts: readonly Part[], difference: number, weight: number): number {
  const squares = sumOf(parts, (part) => (part.gap - difference * part.weight) ** 2);
  return Math.sqrt((parts.length / (parts.length - 1)) * squares) / weight;
}

function pooled(strata: readonly TwoByTwo[], level: number): { lower: number; upper: number } {
  const seen = (group: 'first' | 'second') => ({ successes: sumOf(strata, (one) => one[group].yes), plants: sumOf(strata, (one) => one[group].yes + one[group].no) });
  const { lower, upper } = newcombeDifference(seen('first'), seen('second'), normalQuantile(level));
  return { lower, upper };
}

const around = (difference: number, half: number): { lower: number; upper: number } => ({ lower: Math.max(-1, difference - half), upper: Math.min(1, difference + half) });

const sumOf = <T>(things: readonly T[], of: (thing: T) => number): number => things.reduce((sum, thing) => sum + of(thing), 0);

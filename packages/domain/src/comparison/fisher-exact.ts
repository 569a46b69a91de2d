import { refuseUnlessConfidence } from '../proportion/outcome.ts';
import { DomainError } from '../errors.ts';
import { atOdds, type Hypergeometric, hypergeometricOf, logMass, modeAt, tailFrom } from './hypergeometric.ts';
import { refuseUnlessCounts, tells, type TwoByTwo } from './two-by-two.ts';

export interface FisherExact {
  /** Chance of a table as unlikely as this one or more so, if both groups were alike. */
  readonly chance: number;
  /** Conditional estimate of the odds in the first group over those in the second; 0 or infinite where a cell is empty. */
  readonly oddsRatio: number;
  readonly lower: number;
  readonly upper: number;
}

/** Chances whose logarithms differ by less are the same chance: R's rule, since rounding parts equal ones. */
const SAME = 1e-7;

/** Ten thousand million plants: beyond, a walk through all likely tables takes minutes. */
const MOST_PLANTS = 1e10;

/**
 * Fisher's exact test of two groups: right for few plants too, where others only come near.
 *
 * It takes plants for independent of each other: only for one donor tree, or where each plant is of another one.
 *
 * @param table whole numbers of plants, ten thousand million in all at most
 * @param confidence of the limits of the odds ratio, between 0 and 1, both excluded
 * @throws DomainError `survival/not-a-count`, `survival/not-a-level`; `comparison/nothing-to-compare` when
 *   a group is empty or all plants did the same
 *
 * Source: Fisher RA (1935) The Design of Experiments; two-sided by probability, and the conditional
 * maximum likelihood estimate with its limits, as `fisher.test` in R.
 */
export function fisherExact(table: TwoByTwo, confidence = 0.95): FisherExact {
  refuseUnlessCounts(table);
  refuseUnlessConfidence(confidence);
  if (table.first.yes + table.first.no + table.second.yes + table.second.no > MOST_PLANTS) throw new DomainError('survival/not-a-count', 'so many plants are more than this test can walk through');
  if (!tells(table)) throw new DomainError('comparison/nothing-to-compare', 'both groups must have plants, and not all plants may have done the same');

  const given = hypergeometricOf(table);
  const seen = table.first.yes;
  const outside = (1 - confidence) / 2;
  return {
    chance: Math.min(1, chanceOf(given, seen)),
    oddsRatio: estimateOf(given, seen),
    lower: seen === given.least ? 0 : oddsWhere((odds) => atOdds(given, odds, seen).atLeast >= outside),
    upper: seen === given.most ? Number.POSITIVE_INFINITY : oddsWhere((odds) => atOdds(given, odds, seen).atMost <= outside),
  };
}

/** The tail that the table lies in, and on the other side of the mode all tables that are no likelier. */
function chanceOf(given: Hypergeometric, seen: number): number {
  const mode = modeAt(given, 1);
  const limit = logMass(given, seen) + SAME;
  const isNoLikelier = (x: number): boolean => logMass(given, x) <= limit;
  if (seen <= mode) {
    const first = firstFrom(Math.max(seen + 1, mode), given.most, isNoLikelier);
    return tailFrom(given, seen, -1) + (first > given.most ? 0 : tailFrom(given, first, 1));
  }
  const last = -firstFrom(-mode, -given.least, (x) => isNoLikelier(-x));
  return tailFrom(given, seen, 1) + (last < given.least ? 0 : tailFrom(given, last, -1));
}

/** First whole number of those from `low` to `high` that holds, all after it holding too; one more than `high` where none does. */
function firstFrom(low: number, high: number, holds: (x: number) => boolean): number {
  let [below, above] = [low, high + 1];
  while (below < above) {
    const middle = Math.floor((below + above) / 2);
    if (holds(middle)) above = middle;
    else below = middle + 1;
  }
  return below;
}

function estimateOf(given: Hypergeometric, seen: number): number {
  if (seen === given.least) return 0;
  if (seen === given.most) return Number.POSITIVE_INFINITY;
  return oddsWhere((odds) => atOdds(given, odds, seen).mean >= seen);
}

/** The odds at which a rising answer turns to yes. */
function oddsWhere(isReached: (odds: number) => boolean): number {
  let [below, above] = [-100, 100];
  for (;;) {
    const middle = (below + above) / 2;
    if (!(middle > below && middle < above)) return Math.exp(middle);
    if (isReached(Math.exp(middle))) above = middle;
    else below = middle;
  }
}

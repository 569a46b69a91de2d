import { refuseUnlessConfidence } from '../proportion/outcome.ts';
import { DomainError } from '../errors.ts';
import { chancesAt, type Hypergeometric, hypergeometricOf, meanAt } from './hypergeometric.ts';
import { refuseUnlessCounts, tells, type TwoByTwo } from './two-by-two.ts';

export interface FisherExact {
  /** Chance of a table as unlikely as this one or more so, if both groups were alike. */
  readonly chance: number;
  /** Conditional estimate of the odds in the first group over those in the second; 0 or infinite where a cell is empty. */
  readonly oddsRatio: number;
  readonly lower: number;
  readonly upper: number;
}

/** Chances that differ by less are the same chance: R's rule, since rounding parts equal ones. */
const SAME = 1 + 1e-7;

/**
 * Fisher's exact test of two groups: right for few plants too, where others only come near.
 *
 * It takes plants for independent of each other: only for one donor tree, or where each plant is of another one.
 *
 * @param table whole numbers of plants
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
  if (!tells(table)) throw new DomainError('comparison/nothing-to-compare', 'both groups must have plants, and not all plants may have done the same');

  const given = hypergeometricOf(table);
  const chances = chancesAt(given, 1);
  const seen = chances[table.first.yes - given.least]!;
  const outside = (1 - confidence) / 2;
  return {
    chance: Math.min(1, chances.filter((chance) => chance <= seen * SAME).reduce((a, b) => a + b, 0)),
    oddsRatio: estimateOf(given, table.first.yes),
    lower: table.first.yes === given.least ? 0 : oddsWhere((odds) => atLeast(given, odds, table.first.yes) >= outside),
    upper: table.first.yes === given.most ? Number.POSITIVE_INFINITY : oddsWhere((odds) => 1 - atLeast(given, odds, table.first.yes + 1) <= outside),
  };
}

function estimateOf(given: Hypergeometric, seen: number): number {
  if (seen === given.least) return 0;
  if (seen === given.most) return Number.POSITIVE_INFINITY;
  return oddsWhere((odds) => meanAt(given, odds) >= seen);
}

const atLeast = (given: Hypergeometric, odds: number, n: number): number => chancesAt(given, odds).slice(n - given.least).reduce((a, b) => a + b, 0);

/** The odds at which a rising answer turns to yes. */
export function oddsWhere(isReached: (odds: number) => boolean): number {
  let [below, above] = [-60, 60];
  for (;;) {
    const middle = (below + above) / 2;
    if (!(middle > below && middle < above)) return Math.exp(middle);
    if (isReached(Math.exp(middle))) above = middle;
    else below = middle;
  }
}

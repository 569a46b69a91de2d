import { isCount } from '../count.ts';
import { DomainError } from '../errors.ts';
import type { Interval } from './interval.ts';

/** Where the plants of one stage are: every one in exactly one of these. Whole numbers. */
export interface StageEnds {
  readonly goneOn: number;
  readonly died: number;
  readonly unaccounted: number;
  readonly notRooted: number;
  readonly thrownOut: number;
  readonly givenOut: number;
  /** Taken out unrooted, for a second try elsewhere. */
  readonly restuck: number;
  readonly stillHere: number;
}

export interface SettledRate {
  readonly goneOn: number;
  /** Plants whose end is known: gone on or lost. */
  readonly settled: number;
  /** Plants that wait for their verdict: still here. */
  readonly undecided: number;
  /** Undecided of (settled + undecided), a share. */
  readonly undecidedShare: number;
  /** Given out, or taken out unrooted: they left without a verdict and count on neither side. */
  readonly leftWithoutVerdict: number;
  /** Gone on of settled, a share. Not there while nothing is settled. */
  readonly rate?: number;
  /** The rate if none of the undecided go on, and if all do. */
  readonly range: Interval;
  /** Below 90 % decided: show `range`, not `rate` alone. */
  readonly needsRange: boolean;
  /** At least half decided: may stand in an order with others. */
  readonly isRankable: boolean;
}

/**
 * Share of plants that went on to the next stage, among those whose end is known.
 *
 * A tray that still waits would look like a failure if its plants stood in the
 * denominator, and like a success if one forgot that the slow ones are worse
 * than the quick. So the undecided are left out and shown beside it, and while
 * they are many the answer is a range from "none of the rest" to "all of the rest".
 *
 * @throws DomainError `survival/not-a-count` for a negative or broken count
 * @throws DomainError `survival/no-plants` when no plant is settled or undecided
 *
 * Source: the bounds are those of a missing outcome, Manski CF (1989) J. Human
 * Resources 24:343-360, from memory; the limits of 90 % and one half are our own working rule.
 */
export function settledRate(ends: StageEnds): SettledRate {
  for (const [end, plants] of Object.entries(ends)) {
    if (!isCount(plants)) throw new DomainError('survival/not-a-count', `${end} must be a whole number`, { [end]: plants });
  }
  const { goneOn, stillHere: undecided } = ends;
  const settled = goneOn + ends.died + ends.unaccounted + ends.notRooted + ends.thrownOut;
  const plants = settled + undecided;
  if (plants === 0) throw new DomainError('survival/no-plants', 'a survival share needs at least one plant');

  return {
    goneOn,
    settled,
    undecided,
    undecidedShare: undecided / plants,
    leftWithoutVerdict: ends.givenOut + ends.restuck,
    ...(settled > 0 && { rate: goneOn / settled }),
    range: { lower: goneOn / plants, upper: (goneOn + undecided) / plants },
    // Asked in whole numbers, so that exactly nine in ten is decided enough.
    needsRange: 10 * settled < 9 * plants,
    isRankable: 2 * settled >= plants,
  };
}

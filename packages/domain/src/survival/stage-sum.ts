import type { Stage } from '../ledger/entry.ts';
import type { StageEnds } from './settled-rate.ts';
import { type StageTally, sumOf } from './stage-tally.ts';

/** Plants of many tallies at one stage; whole numbers. */
export interface StageSum {
  /** Plants that came to this stage or past it, each counted once. */
  readonly reached: number;
  /** Plants that went on from here, or skipped this stage on their way to a later one. */
  readonly goneOn: number;
  readonly died: Readonly<Record<string, number>>;
  readonly unaccounted: number;
  readonly notRooted: number;
  readonly thrownOut: number;
  readonly givenOut: number;
  readonly restuck: number;
  /** Left for mixed batches less come from them. Below 0 where more of what is summed up was mixed in. */
  readonly mixedAway: number;
  readonly here: number;
  /** Part of `here`. */
  readonly notFound: number;
}

export const NOTHING: StageSum = {
  reached: 0,
  goneOn: 0,
  died: {},
  unaccounted: 0,
  notRooted: 0,
  thrownOut: 0,
  givenOut: 0,
  restuck: 0,
  mixedAway: 0,
  here: 0,
  notFound: 0,
};

export function addTally(sum: StageSum, tally: StageTally): StageSum {
  const died = { ...sum.died };
  for (const [cause, n] of Object.entries(tally.died)) died[cause] = (died[cause] ?? 0) + n;
  return {
    reached: sum.reached + tally.cameIn,
    goneOn: sum.goneOn + tally.goneOn,
    died,
    unaccounted: sum.unaccounted + tally.unaccounted,
    notRooted: sum.notRooted + tally.notRooted,
    thrownOut: sum.thrownOut + tally.thrownOut,
    givenOut: sum.givenOut + tally.givenOut,
    restuck: sum.restuck + tally.restuck,
    mixedAway: sum.mixedAway + (tally.mixed ?? 0) - (tally.mixedIn ?? 0),
    here: sum.here + tally.here,
    notFound: sum.notFound + (tally.notFound ?? 0),
  };
}

/**
 * Where the plants of a stage are, in the form that a rate is taken from.
 *
 * Nothing goes on from `planted`: there the good end is to be alive, and the
 * open question is a tree that the last check did not find. So the rate leaves
 * the missing out, and the lower end of its range counts them as dead: the two
 * rates that reports ask for.
 */
export function endsOf(sum: StageSum, stage: Stage): StageEnds {
  const isLast = stage === 'planted';
  return {
    goneOn: isLast ? sum.here - sum.notFound : sum.goneOn,
    stillHere: isLast ? sum.notFound : sum.here,
    died: sumOf(sum.died),
    unaccounted: sum.unaccounted,
    notRooted: sum.notRooted,
    thrownOut: sum.thrownOut,
    givenOut: sum.givenOut,
    restuck: sum.restuck,
  };
}

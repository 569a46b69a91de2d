import { isCount } from '../count.ts';
import { DomainError } from '../errors.ts';
import { STAGES, type Stage } from '../ledger/entry.ts';

/**
 * What came of one sticking's plants at one stage. A row may also stand for many
 * stickings of one donor, so a million plants are a few thousand rows.
 *
 * Splits, joins and moves at the same stage never count, nor does a gift to a
 * partner inside the programme. A surplus that took back an unaccounted loss
 * lowers `unaccounted`. Plants mixed or identified count in the row that they
 * belong to now, as come in there and nowhere else.
 *
 * The books of a row close: cameIn = gone on + died + unaccounted + not rooted
 * + thrown out + given out + restuck + here.
 */
export interface StageTally {
  /** Clone group, where donor trees turned out to be one clone. Not there for plants known only to their stand. */
  readonly donorId?: string | undefined;
  readonly standId?: string | undefined;
  readonly stage: Stage;
  /**
   * Plants that arrived at this very stage: stuck, gone on from an earlier one, received,
   * found. Received plants have no row at a stage before their own.
   */
  readonly cameIn: number;
  /** By the stage gone on to. A stage may be skipped: a cutting may go straight to `potted`. */
  readonly goneOn: Readonly<Partial<Record<Stage, number>>>;
  /** By the cause as the eye saw it. */
  readonly died: Readonly<Record<string, number>>;
  readonly unaccounted: number;
  readonly notRooted: number;
  readonly thrownOut: number;
  /** Out of the programme. */
  readonly givenOut: number;
  /** Taken out unrooted, for a second try in a new sticking, where they come in again. */
  readonly restuck: number;
  readonly here: number;
  /** Of those here: planted trees that the last check missed. */
  readonly notFound?: number | undefined;
}

export const sumOf = (counts: Readonly<Record<string, number>>): number =>
  Object.values(counts).reduce((sum, n) => sum + n, 0);

/** Whether `stage` comes after `other`. */
export const isLater = (stage: Stage, other: Stage): boolean => STAGES.indexOf(stage) > STAGES.indexOf(other);

/**
 * @throws DomainError `survival/not-a-count` for a negative or broken number, or more not found than here
 * @throws DomainError `survival/stage-gone-back` when plants go on to the same or an earlier stage
 * @throws DomainError `survival/books-do-not-close` when what came in is not what left and what is here
 */
export function refuseUnlessSound(tally: StageTally): void {
  const { stage, cameIn, goneOn, died, here, notFound = 0 } = tally;
  const ends = [tally.unaccounted, tally.notRooted, tally.thrownOut, tally.givenOut, tally.restuck, here];
  const counts = [cameIn, notFound, ...ends, ...Object.values(goneOn), ...Object.values(died)];
  const odd = counts.find((n) => !isCount(n));
  if (odd !== undefined || notFound > here) {
    throw new DomainError('survival/not-a-count', 'a tally holds whole numbers, not found at most here', {
      stage,
      number: odd ?? notFound,
    });
  }
  for (const to of STAGES) {
    if ((goneOn[to] ?? 0) > 0 && !isLater(to, stage)) {
      throw new DomainError('survival/stage-gone-back', 'plants go on to a later stage only', { from: stage, to });
    }
  }
  const accounted = ends.reduce((sum, n) => sum + n, 0) + sumOf(goneOn) + sumOf(died);
  if (accounted !== cameIn) {
    throw new DomainError('survival/books-do-not-close', 'what came in must be what left and what is here', {
      stage,
      cameIn,
      accounted,
    });
  }
}

import { isCount } from '../count.ts';
import { DomainError } from '../errors.ts';
import type { Stage } from '../ledger/entry.ts';

/**
 * What came of one sticking's plants at one stage. A row may also stand for many
 * stickings of one donor, so a million plants are a few thousand rows.
 *
 * Splits, joins and moves at the same stage never count, nor does a gift to a
 * partner inside the programme. A surplus that took back an unaccounted loss
 * lowers `unaccounted`.
 *
 * The books of a row close: cameIn + mixedIn = goneOn + died + unaccounted +
 * notRooted + thrownOut + givenOut + restuck + mixed + here.
 */
export interface StageTally {
  /** Clone group, where donor trees turned out to be one clone. Not there for plants known only to their stand. */
  readonly donorId?: string | undefined;
  readonly standId?: string | undefined;
  readonly stage: Stage;
  /**
   * Plants that reached this stage or a later one: stuck, gone on from an earlier one, received, found.
   * One that skips a stage came into it and went on from it all the same. Received plants have no row
   * at a stage before their own.
   */
  readonly cameIn: number;
  readonly goneOn: number;
  /** By the cause as the eye saw it. */
  readonly died: Readonly<Record<string, number>>;
  readonly unaccounted: number;
  readonly notRooted: number;
  readonly thrownOut: number;
  /** Out of the programme. */
  readonly givenOut: number;
  /** Taken out unrooted, for a second try in a new sticking, where they come in again. */
  readonly restuck: number;
  /** Left for a mixed batch; or, in a mixed batch's own row, identified and gone back to their sticking. */
  readonly mixed?: number | undefined;
  /** Came by mixing or identifying: in another row they have come in already, and are not counted twice. */
  readonly mixedIn?: number | undefined;
  readonly here: number;
  /** Of those here: planted trees that the last check missed. */
  readonly notFound?: number | undefined;
}

export const sumOf = (counts: Readonly<Record<string, number>>): number =>
  Object.values(counts).reduce((sum, n) => sum + n, 0);

/**
 * @throws DomainError `survival/not-a-count` for a negative or broken number, or more not found than here
 * @throws DomainError `survival/nothing-after-planted` when plants go on from the last stage
 * @throws DomainError `survival/books-do-not-close` when what came in is not what left and what is here
 */
export function refuseUnlessSound(tally: StageTally): void {
  const { stage, cameIn, mixedIn = 0, died, here, notFound = 0 } = tally;
  const { goneOn, unaccounted, notRooted, thrownOut, givenOut, restuck, mixed = 0 } = tally;
  const ends = [goneOn, ...Object.values(died), unaccounted, notRooted, thrownOut, givenOut, restuck, mixed, here];
  const odd = [cameIn, mixedIn, notFound, ...ends].find((n) => !isCount(n));
  if (odd !== undefined || notFound > here) {
    throw new DomainError('survival/not-a-count', 'a tally holds whole numbers, not found at most here', {
      stage,
      number: odd ?? notFound,
    });
  }
  if (stage === 'planted' && goneOn > 0) {
    throw new DomainError('survival/nothing-after-planted', 'no plant goes on from its planting site', { goneOn });
  }
  const accounted = ends.reduce((sum, n) => sum + n, 0);
  if (accounted !== cameIn + mixedIn) {
    throw new DomainError('survival/books-do-not-close', 'what came in must be what left and what is here', {
      stage,
      cameIn: cameIn + mixedIn,
      accounted,
    });
  }
}

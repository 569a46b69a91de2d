import type { StageTally } from '../survival/stage-tally.ts';
import type { Books, Effect, Movement } from './books.ts';
import { type Stage, STAGES } from './entry.ts';
import { isLater } from './stage.ts';

/** Of one batch, what a tally needs. */
export interface StagedBooks {
  readonly stage: Stage;
  readonly books: Pick<Books, 'balance' | 'movements' | 'notFound'>;
}

/** Whose plants they are; nothing for plants of which it is not known. */
export type Whose = Pick<StageTally, 'donorId' | 'standId'>;

/**
 * What came of the plants of one sticking, stage by stage, from the books of all its batches.
 *
 * A plant that skips a stage came into it and went on from it on that day,
 * though no batch of it ever stood there.
 *
 * @returns one tally for each stage that a batch is at or was skipped, in the order of the stages
 */
export function sumTally(batches: readonly StagedBooks[], whose: Whose = {}): StageTally[] {
  return STAGES.flatMap((stage) => {
    const here = batches.filter((batch) => batch.stage === stage);
    const skipped = batches.reduce((sum, batch) => sum + skippingOver(stage, batch), 0);
    return here.length > 0 || skipped > 0 ? [{ ...whose, ...tallyOf(stage, here, skipped) }] : [];
  });
}

/** Plants that went from before `stage` to beyond it. */
const skippingOver = (stage: Stage, { stage: from, books }: StagedBooks): number =>
  books.movements.reduce(
    (sum, { effect, n, toStage }) =>
      effect === 'wentOn' && toStage && isLater(stage, from) && isLater(toStage, stage) ? sum + n : sum,
    0,
  );

function tallyOf(stage: Stage, batches: readonly StagedBooks[], skipped: number): StageTally {
  const movements = batches.flatMap(({ books }) => books.movements);
  const sum = (...effects: readonly Effect[]): number =>
    movements.reduce((total, { effect, n }) => (effects.includes(effect) ? total + n : total), 0);

  return {
    stage,
    // What is split or given within the programme stays with its sticking: the two sides cancel out.
    cameIn:
      skipped +
      sum('stuck', 'received', 'wentIn', 'restuckIn', 'found', 'splitIn', 'givenIn') -
      sum('splitOut', 'givenAcross'),
    goneOn: skipped + sum('wentOn'),
    died: deathsByCause(movements),
    unaccounted: sum('unaccounted') - sum('takenBack'),
    notRooted: sum('notRooted'),
    thrownOut: sum('thrownOut'),
    givenOut: sum('givenOut'),
    restuck: sum('restuckOut'),
    mixed: sum('mixedOut', 'identifiedOut'),
    mixedIn: sum('mixedIn', 'identifiedIn'),
    here: batches.reduce((total, { books }) => total + books.balance, 0),
    notFound: batches.reduce((total, { books }) => total + books.notFound, 0),
  };
}

function deathsByCause(movements: readonly Movement[]): Record<string, number> {
  const deaths: Record<string, number> = {};
  for (const { effect, n, cause = 'unknown' } of movements) {
    if (effect === 'died') deaths[cause] = (deaths[cause] ?? 0) + n;
  }
  return deaths;
}

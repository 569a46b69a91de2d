import { type BatchHere, batchesHere } from '../../lib/phone/batch-here.ts';
import { STAGE_AFTER, type Act, type Stage } from './act.ts';
import { booksOfHere } from './books-of-here.ts';
import type { FieldPackNow } from './use-field-pack.ts';

/** A batch that plants may join, with how many it has. */
export interface Joinable {
  readonly batch: BatchHere;
  readonly balance: number;
}

/**
 * Batches at a place that the plants of another one may join: of the same sticking, as far on as they will be, and not held. Copies of one
 * tree, so no line is broken. Of mixed batches this phone cannot tell what they are parts of, so they always become a new one.
 *
 * @param found all walks that are packed are looked through, and what began here
 */
export function joinable(act: Act, batch: BatchHere, placeId: string | undefined, found: Pick<FieldPackNow, 'walks' | 'pack' | 'entries' | 'today'>): Joinable[] {
  const stickingId = batch.books?.batch.stickingId;
  const stage = stageAfter(act, batch.stage);
  if (placeId === undefined || stickingId === undefined || stage === undefined) return [];
  const all = new Map(found.walks.flatMap((walk) => batchesHere(walk, found.pack.places, found.entries, found.walks)).map((one) => [one.id, one]));
  return [...all.values()].flatMap((one) => {
    if (one.id === batch.id || one.stage !== stage || one.books?.batch.stickingId !== stickingId) return [];
    const { ahead, isHeld } = booksOfHere(one, found);
    const isThere = (ahead?.after.stays.at(-1)?.placeId ?? one.placeId) === placeId;
    return isThere && !isHeld && ahead && ahead.after.balance > 0 ? [{ batch: one, balance: ahead.after.balance }] : [];
  });
}

/** At which stage the plants will be; nothing for acts after which none is left to join others. */
function stageAfter(act: Act, stage: Stage): Stage | undefined {
  if (act === 'move') return stage;
  return act === 'lift' || act === 'pot' || act === 'plant' ? STAGE_AFTER[act] : undefined;
}

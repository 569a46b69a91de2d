import type { BooksShown, Previewed } from '@sprigline/contract';
import type { Books } from '@sprigline/domain';
import { rootIdOf } from './stored-entry.ts';
import type { Scribe } from './judge/scribe.ts';
import { answersOf } from './written-item.ts';

/** What the books make of entries that nobody has written yet. */
export function previewOf(scribe: Scribe): Previewed {
  const own = new Set(scribe.additions.entries.flatMap((entry) => [entry.id, rootIdOf(entry)]));
  return {
    entries: answersOf(scribe),
    batches: scribe.keeper.changed().map(({ batch, before, after }) => ({
      batchId: batch.id,
      stage: batch.stage,
      ...(before && { before: booksShown(before) }),
      after: booksShown(after),
      movements: after.movements.filter(({ entryId }) => own.has(entryId)),
      flags: after.flags.filter(({ entryId }) => own.has(entryId)),
    })),
  };
}

const booksShown = ({ balance, rooted, lastSeen, notFound, heldBy, unconfirmed, calledOn }: Books): BooksShown => ({
  balance, rootedNow: rooted.now, rootedEver: rooted.ever, lastSeen, notFound, held: heldBy.length > 0, unconfirmed, calledOn,
});

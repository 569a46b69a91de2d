import type { PackedBooks } from '@sprigline/contract';
import type { EntryToSend } from '../entry-to-send.ts';

type Identity = PackedBooks['batch'];

/** A batch that began on this device: nobody else may know of it yet. */
export interface OpenedHere {
  readonly batch: Identity;
  /** The batch that its plants came from; nothing where they were stuck. */
  readonly fromBatchId: string | undefined;
  readonly label: string | undefined;
  readonly rows: string | undefined;
  readonly openedOn: string;
}

const STAGE_OF = { lifted: 'liner', potted: 'potted', planted: 'planted' } as const;

/**
 * The batches that were opened by what was logged here, the first one first. Also what comes of those again.
 *
 * @param own what was logged here, in any order: ids that are made here grow with time
 * @param known batches of the packs, which say of which sticking and stage the plants are
 */
export function openedHere(own: readonly EntryToSend[], known: readonly Identity[]): OpenedHere[] {
  const withdrawn = new Set(own.flatMap(({ saying }) => (saying.kind === 'withdrawn' ? [saying.entryId] : [])));
  const identities = new Map(known.map((batch) => [batch.id, batch]));
  const opened: OpenedHere[] = [];
  for (const entry of own.toSorted((one, other) => (one.id < other.id ? -1 : 1))) {
    const begun = withdrawn.has(entry.id) ? undefined : begunBy(entry, identities);
    if (!begun || identities.has(begun.batch.id)) continue;
    identities.set(begun.batch.id, begun.batch);
    opened.push(begun);
  }
  return opened;
}

function begunBy({ id, observedOn, saying }: EntryToSend, identities: ReadonlyMap<string, Identity>): OpenedHere | undefined {
  if (saying.kind === 'stuck') {
    const { batchId, stickingId, placeId, label, rows } = saying;
    return { batch: { id: batchId, stage: 'cutting', stickingId, openingEntryId: id, openingPlaceId: placeId }, fromBatchId: undefined, label, rows, openedOn: observedOn };
  }
  if (saying.kind !== 'lifted' && saying.kind !== 'potted' && saying.kind !== 'planted' && saying.kind !== 'moved') return undefined;
  const { batchId, toBatchId, placeId, label, rows } = saying;
  const from = identities.get(batchId);
  // Of plants that nobody here knows, nothing can be said: they belong to another walk.
  if (toBatchId === undefined || from === undefined) return undefined;
  const stage = saying.kind === 'moved' ? from.stage : STAGE_OF[saying.kind];
  return { batch: { id: toBatchId, stage, stickingId: from.stickingId, openingEntryId: id, openingPlaceId: placeId }, fromBatchId: batchId, label, rows, openedOn: observedOn };
}

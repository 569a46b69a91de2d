import type { BatchOnRound, Pack, PackedBooks } from '@sprigline/contract';
import type { EntryToSend } from '../entry-to-send.ts';
import { type OpenedHere, openedHere } from './opened-here.ts';
import type { KeptWalk } from './pack-shapes.ts';

/** A batch as this phone knows it: packed, or begun here. */
export interface BatchHere {
  readonly id: string;
  readonly label: string;
  readonly stage: BatchOnRound['stage'];
  /** Donor tree, species and stand, as far as they are known. */
  readonly of: string;
  readonly placeId: string;
  readonly place: string;
  readonly isHeld: boolean;
  readonly isNew: boolean;
  /** Nothing beyond the first few hundred of a walk. */
  readonly books: PackedBooks | undefined;
}

/**
 * What is packed of a walk, and what was begun here of its plants or in its places; the new ones last.
 *
 * @param walks all that are packed: what is joined on another walk is no new batch
 */
export function batchesHere(walk: KeptWalk, places: Pack['places'], own: readonly EntryToSend[], walks: readonly KeptWalk[]): BatchHere[] {
  const packed = walk.round.stops.flatMap(({ place, batches }) => batches.map((batch) => packedBatch(batch, place, walk)));
  const byId = new Map(packed.map((batch) => [batch.id, batch]));
  const known = [walk, ...walks.filter(({ id }) => id !== walk.id)].flatMap(identitiesIn);
  const names = new Map(places.map(({ id, name }) => [id, name]));
  for (const opened of openedHere(own, known)) {
    if (!byId.has(opened.fromBatchId ?? '') && !liesIn(opened.batch.openingPlaceId, walk.id, places)) continue;
    byId.set(opened.batch.id, newBatch(opened, byId.get(opened.fromBatchId ?? ''), names));
  }
  return [...byId.values()];
}

/** Beyond the first few hundred a walk has no books, and it is not known of which sticking they are. */
function identitiesIn({ books, round }: KeptWalk): PackedBooks['batch'][] {
  const withBooks = new Set(books.map(({ batch }) => batch.id));
  const without = round.stops.flatMap(({ place, batches }) => batches.filter(({ id }) => !withBooks.has(id)).map(({ id, stage }) => ({ id, stage, openingEntryId: '', openingPlaceId: place.id })));
  return [...books.map(({ batch }) => batch), ...without];
}

function packedBatch({ id, label, stage, donorTree, taxon, stand, held }: BatchOnRound, place: { id: string; name: string }, walk: KeptWalk): BatchHere {
  const of = [donorTree?.label, taxon?.name, stand?.name].filter(Boolean).join(' · ');
  return { id, label: label ?? shortName(id), stage, of, placeId: place.id, place: place.name, isHeld: held, isNew: false, books: walk.books.find(({ batch }) => batch.id === id) };
}

function newBatch({ batch, label }: OpenedHere, from: BatchHere | undefined, names: ReadonlyMap<string, string>): BatchHere {
  const { id, stage, openingPlaceId } = batch;
  return { id, label: label ?? shortName(id), stage, of: from?.of ?? '', placeId: openingPlaceId, place: names.get(openingPlaceId) ?? '', isHeld: false, isNew: true, books: { batch, entries: [] } };
}

/** What stands for a label where there is none. */
const shortName = (id: string): string => `…${id.slice(-6)}`;

function liesIn(placeId: string, outer: string, places: Pack['places']): boolean {
  const parents = new Map(places.map(({ id, parentId }) => [id, parentId]));
  const passed = new Set<string>();
  for (let at: string | undefined = placeId; at !== undefined && !passed.has(at); at = parents.get(at) ?? undefined) {
    if (at === outer) return true;
    passed.add(at);
  }
  return false;
}

/** Labels on plants that this phone knows of, in capitals: none is used twice. */
export function labelsHere(walk: KeptWalk | undefined, own: readonly EntryToSend[]): ReadonlySet<string> {
  const packed = walk?.round.stops.flatMap(({ batches }) => batches.flatMap(({ label }) => label ?? [])) ?? [];
  const told = own.flatMap(({ saying }) => ('label' in saying && typeof saying.label === 'string' ? [saying.label] : []));
  return new Set([...packed, ...told].map((label) => label.toUpperCase()));
}

import { isLabelCode, keptLabel } from '@sprigline/domain';
import { batchesHere } from '../../lib/phone/batch-here.ts';
import type { KeptPack, KeptWalk } from '../../lib/phone/pack-shapes.ts';
import { type OwnItem, standing } from '../../lib/phone/use-own.ts';
import { claimsHere } from './claims-here.ts';

/** What lies on this phone of one programme. */
export interface Here {
  readonly pack: KeptPack;
  /** The newest first. */
  readonly walks: readonly KeptWalk[];
  readonly own: readonly OwnItem[];
}

/** What a label is on, as far as this phone knows. */
export type FoundHere =
  | { readonly is: 'batch'; readonly label: string; readonly walk: KeptWalk; readonly batchId: string }
  | { readonly is: 'donorTree'; readonly label: string; readonly id: string }
  /** With the walk that leads by it, and the batch that stands there alone. */
  | { readonly is: 'place'; readonly label: string; readonly id: string; readonly walk: KeptWalk | undefined; readonly batchId: string | undefined }
  /** One of our codes that no pack knows: new, or on something that was not packed. */
  | { readonly is: 'code' }
  /** No code of ours, and on nothing that this phone knows. */
  | { readonly is: 'unknown' };

/**
 * Looks a label up in the packs and in what was logged here since.
 *
 * @param typed as it was scanned or typed, its check already made
 * @param walkId of the walk that one came from: a batch of several walks is found in this one
 */
export function foundHere(typed: string, { pack, walks, own }: Here, walkId: string | undefined): FoundHere {
  const code = keptLabel(typed);
  const isIt = (label: string): boolean => label.toUpperCase() === code.toUpperCase();
  const ordered = walks.toSorted((one, other) => Number(other.id === walkId) - Number(one.id === walkId));
  const claim = claimsHere(own).find((one) => isIt(one.code));
  for (const walk of ordered) {
    const labelled = claim?.on.batchId ?? walk.labels?.find((one) => isIt(one.code))?.batchId;
    const batch = batchesIn(walk, { pack, walks, own }).find(({ id, label }) => id === labelled || (labelled === undefined && isIt(label)));
    if (batch) return { is: 'batch', label: batch.label, walk, batchId: batch.id };
  }
  const packed = pack.labels?.find((one) => isIt(one.code));
  const treeId = claim?.on.donorTreeId ?? (packed?.is === 'donorTree' ? packed.id : undefined);
  const tree = pack.donorTrees.find(({ id }) => id === treeId);
  if (tree) return { is: 'donorTree', label: tree.label, id: tree.id };
  const placeId = claim?.on.placeId ?? (packed?.is === 'place' ? packed.id : undefined);
  const place = pack.places.find(({ id }) => id === placeId);
  if (place) return { is: 'place', label: place.name, id: place.id, ...wayTo(place.id, ordered) };
  return { is: isLabelCode(code) ? 'code' : 'unknown' };
}

/** Packed batches of a walk, and those begun here since. */
export const batchesIn = (walk: KeptWalk, { pack, walks, own }: Here) =>
  batchesHere(walk, pack.places, standing(own), walks);

/** A place that was packed is walked; a tray lies on a walk, and where one batch stands alone in it, that one is meant. */
function wayTo(placeId: string, walks: readonly KeptWalk[]): { walk: KeptWalk | undefined; batchId: string | undefined } {
  const own = walks.find(({ id, kind }) => id === placeId && kind === 'places');
  if (own) return { walk: own, batchId: undefined };
  for (const walk of walks) {
    const stop = walk.round.stops.find(({ place }) => place.id === placeId);
    if (stop) return { walk, batchId: stop.batches.length === 1 ? stop.batches[0]?.id : undefined };
  }
  return { walk: undefined, batchId: undefined };
}

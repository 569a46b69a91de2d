import type { Pack } from '@sprigline/contract';

export interface PlaceToPack {
  readonly id: string;
  readonly name: string;
  /** How many places it lies in. */
  readonly depth: number;
  /** In it and in all that lies in it. */
  readonly batches: number;
}

/** A tray is packed with the bench it lies on: one tap a tray would be many. */
const TOO_SMALL: readonly Pack['places'][number]['kind'][] = ['tray', 'partner'];

/**
 * What can be packed by one tap: places with plants in them, in walking order.
 *
 * @param places parents before what lies in them
 */
export function placesToPack(places: Pack['places']): PlaceToPack[] {
  const depths = new Map<string, number>();
  const within = new Map<string, number>();
  for (const { id, parentId } of places) depths.set(id, parentId === null ? 0 : (depths.get(parentId) ?? -1) + 1);
  for (const { id, parentId, batches } of places.toReversed()) {
    const all = batches + (within.get(id) ?? 0);
    within.set(id, all);
    if (parentId !== null) within.set(parentId, (within.get(parentId) ?? 0) + all);
  }
  return places
    .filter(({ id, kind }) => !TOO_SMALL.includes(kind) && (within.get(id) ?? 0) > 0)
    .map(({ id, name }) => ({ id, name, depth: depths.get(id) ?? 0, batches: within.get(id) ?? 0 }));
}

import type { BatchInList, PlaceInTree } from '@sprigline/contract';
import { pathTo } from '../../lib/place-path.ts';

/** Where one walks to, and how much stands there. */
export interface Stop {
  readonly placeId: string;
  readonly words: string;
  readonly batches: number;
  readonly plants: number;
}

/** The benches, frames and beds at which batches stand; a tray counts with what it lies on. In the order of the batches. */
export function placesOfBatches(batches: readonly Pick<BatchInList, 'place' | 'balance'>[], places: readonly PlaceInTree[]): Stop[] {
  const found = new Map<string, Stop>();
  for (const { place, balance } of batches) {
    const path = place ? pathTo(places, place.id) : [];
    const isInTray = path.length > 1 && path.at(-1)?.kind === 'tray';
    const way = isInTray ? path.slice(0, -1) : path;
    const id = way.at(-1)?.id;
    if (id === undefined) continue;
    const so = found.get(id);
    found.set(id, { placeId: id, words: way.map(({ name }) => name).join(' › '), batches: (so?.batches ?? 0) + 1, plants: (so?.plants ?? 0) + balance });
  }
  return [...found.values()];
}

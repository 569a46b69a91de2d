import type { PlaceInTree } from '@sprigline/contract';

/**
 * A place named with all it lies in, "Glasshouse › Bench 1"; empty where it is unknown. Shorter than a path of places, since the page that a
 * phone keeps reads it at every start.
 */
export function placeName(places: readonly Pick<PlaceInTree, 'id' | 'parentId' | 'name'>[], id: string | null): string {
  const place = places.find((one) => one.id === id);
  return place ? [placeName(places, place.parentId), place.name].filter(Boolean).join(' › ') : '';
}

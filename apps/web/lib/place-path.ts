import type { PlaceInTree } from '@sprigline/contract';
import { placeName } from './place-name.ts';

/** A place with all it lies in, the outermost first. */
export function pathTo<T extends Pick<PlaceInTree, 'id' | 'parentId'>>(places: readonly T[], id: string): T[] {
  const byId = new Map(places.map((place) => [place.id, place]));
  const path: T[] = [];
  for (let at = byId.get(id); at && !path.includes(at); at = at.parentId === null ? undefined : byId.get(at.parentId)) path.unshift(at);
  return path;
}

/** Choices of places, each with what it lies in: "Glasshouse › Bench 1 › Tray 4". */
export function placeChoices(places: readonly PlaceInTree[], fits: (place: PlaceInTree) => boolean = () => true) {
  return places.filter(fits).map(({ id }) => ({ value: id, words: placeName(places, id) }));
}

/** Where trees are planted out. */
export const isAtSite = ({ kind }: Pick<PlaceInTree, 'kind'>): boolean => kind === 'site' || kind === 'plot';
/** Where plants are grown by ourselves. */
export const isInNursery = (place: PlaceInTree): boolean => !isAtSite(place) && place.kind !== 'partner';

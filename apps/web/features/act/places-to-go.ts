import type { Pack } from '@sprigline/contract';
import type { Act } from './act.ts';
import { type Narrowed, narrowed } from '../../ui/form/narrowed.ts';

type Place = Pack['places'][number];

const isAtSite = ({ kind }: Place): boolean => kind === 'site' || kind === 'plot';
const fits = (act: Act | 'stick' | 'any', place: Place): boolean => {
  if (act === 'any') return true;
  if (act === 'plant') return isAtSite(place);
  if (act === 'stick') return place.kind === 'tray';
  return act === 'move' ? place.kind !== 'partner' : !isAtSite(place) && place.kind !== 'partner';
};

/**
 * Places to choose from: those used last, then in walking order; narrowed by what was typed, word by word, in any order.
 *
 * @param places of the pack, parents before what lies in them
 * @param chosen always among them, so that it can be seen
 */
export function placesToGo(places: readonly Place[], act: Act | 'stick' | 'any', typed: string, last: readonly string[], chosen: string | undefined): Narrowed {
  const byId = new Map(places.map((place) => [place.id, place]));
  const fitting = places.filter((place) => fits(act, place)).map((place) => ({ id: place.id, name: place.name, within: withinOf(place, byId) }));
  return narrowed(fitting, typed, last, chosen);
}

/** What it lies in, the outermost first: "House 1 › Bench A". Empty for the outermost. */
function withinOf({ parentId }: Place, byId: ReadonlyMap<string, Place>): string {
  const names: string[] = [];
  const passed = new Set<string>();
  for (let at = parentId === null ? undefined : byId.get(parentId); at && !passed.has(at.id); at = at.parentId === null ? undefined : byId.get(at.parentId)) {
    passed.add(at.id);
    names.unshift(at.name);
  }
  return names.join(' › ');
}

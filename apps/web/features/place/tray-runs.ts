import type { PlaceInTree } from '@sprigline/contract';

type Run = readonly [PlaceInTree, ...PlaceInTree[]];

/** Trays that lie on one bench come together, everything else by itself; the order stays. */
export function inRuns(places: readonly PlaceInTree[]): Run[] {
  const runs: [PlaceInTree, ...PlaceInTree[]][] = [];
  for (const place of places) {
    const last = runs.at(-1);
    if (last && place.kind === 'tray' && last[0].kind === 'tray' && last[0].parentId === place.parentId) last.push(place);
    else runs.push([place]);
  }
  return runs;
}

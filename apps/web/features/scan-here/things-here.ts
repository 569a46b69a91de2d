import type { Choosable } from '../../ui/form/narrowed.ts';
import { batchesIn, type Here } from './found-here.ts';

export interface ThingHere extends Choosable {
  /** Of a batch, the walk that it is on. */
  readonly walkId: string;
}

/** What a new label may be on, of what lies on this phone: of batches those of the walk that one came from, else of all walks, each once. */
export function thingsHere(is: 'batch' | 'donorTree' | 'place', here: Here, walkId: string | undefined): ThingHere[] {
  const { pack, walks } = here;
  if (is === 'donorTree') {
    const stands = new Map(pack.stands.map(({ id, name }) => [id, name]));
    return pack.donorTrees.map(({ id, label, standId }) => ({ id, name: label, within: stands.get(standId) ?? '', walkId: '' }));
  }
  if (is === 'place') {
    const names = new Map(pack.places.map(({ id, name }) => [id, name]));
    return pack.places.filter(({ kind }) => kind !== 'partner').map(({ id, name, parentId }) => ({ id, name, within: names.get(parentId ?? '') ?? '', walkId: '' }));
  }
  const walked = walks.filter(({ id }) => id === walkId);
  const found = new Map<string, ThingHere>();
  for (const walk of walked.length > 0 ? walked : walks) {
    for (const { id, label, of, place } of batchesIn(walk, here)) if (!found.has(id)) found.set(id, { id, name: label, within: [place, of].filter(Boolean).join(' · '), walkId: walk.id });
  }
  return [...found.values()];
}

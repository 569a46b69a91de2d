import type { Pack, PlacePack } from '@sprigline/contract';
import { placeName } from '../place-name.ts';
import { type Ask, apiPath } from './ask.ts';
import type { KeptPack, KeptWalk } from './pack-shapes.ts';
import type { Store } from './store.ts';

/** Why nothing was packed; what was packed before stays. */
export type NotPacked = 'unheard' | 'signedOut' | 'refused' | 'full';

const walkKey = ({ programme, id }: Pick<KeptWalk, 'programme' | 'id'>): string => `${programme}/${id}`;

interface ToPack extends Pick<KeptWalk, 'programme' | 'kind' | 'id'> {
  readonly now: number;
}

/**
 * Takes a place or a printed list along: the walk with the books of its batches, and what holds wherever one walks.
 * Both are kept at once, or neither.
 */
export async function packWalk(store: Store, ask: Ask, { programme, kind, id, now }: ToPack): Promise<KeptWalk | NotPacked> {
  const answers = await heard(ask, [apiPath(programme, 'pack'), apiPath(programme, kind, id, 'pack')]);
  if (typeof answers === 'string') return answers;
  const [pack, walk] = answers as [Pack, PlacePack];
  const kept: KeptWalk = { programme, kind, id, name: placeName(pack.places, id) || walk.round.place.name, packedAt: now, round: walk.round, books: walk.books, labels: walk.labels };
  if (!(await keepAll(store, programme, { ...pack, packedAt: now }, kept))) return 'full';
  void import('./telling.ts').then(({ tellOfDevice }) => tellOfDevice(store, ask, [programme], { hasPacked: true }), () => undefined);
  return kept;
}

/** Takes along anew what holds wherever one walks; walks stay as they were packed. */
export async function packProgramme(store: Store, ask: Ask, { programme, now }: Omit<ToPack, 'kind' | 'id'>): Promise<KeptPack | NotPacked> {
  const answers = await heard(ask, [apiPath(programme, 'pack')]);
  if (typeof answers === 'string') return answers;
  const kept: KeptPack = { ...(answers[0] as Pack), packedAt: now };
  return (await keepAll(store, programme, kept, undefined)) ? kept : 'full';
}

/** What was answered, all of it, or why there is nothing to pack. */
async function heard(ask: Ask, paths: readonly string[]): Promise<unknown[] | NotPacked> {
  let answers;
  try {
    answers = await Promise.all(paths.map((path) => ask(path)));
  } catch {
    return 'unheard';
  }
  const worst = Math.max(...answers.map(({ status }) => status));
  if (worst === 401) return 'signedOut';
  if (worst >= 500) return 'unheard';
  return worst >= 400 ? 'refused' : answers.map(({ body }) => body);
}

async function keepAll(store: Store, programme: string, pack: KeptPack, walk: KeptWalk | undefined): Promise<boolean> {
  try {
    const writing = store.transaction(['packs', 'walks'], 'readwrite', { durability: 'strict' });
    await Promise.all([writing.objectStore('packs').put(pack, programme), ...(walk ? [writing.objectStore('walks').put(walk, walkKey(walk))] : [])]);
    await writing.done;
    return true;
  } catch (error) {
    if (error instanceof DOMException && error.name === 'QuotaExceededError') return false;
    throw error;
  }
}

export const packOf = (store: Store, programme: string): Promise<KeptPack | undefined> => store.get('packs', programme);

export const walkOf = (store: Store, walk: Pick<KeptWalk, 'programme' | 'id'>): Promise<KeptWalk | undefined> => store.get('walks', walkKey(walk));

/** What was packed, the newest first. */
export async function allPacked(store: Store): Promise<{ packs: KeptPack[]; walks: KeptWalk[] }> {
  const [packs, walks] = await Promise.all([store.getAll('packs'), store.getAll('walks')]);
  return { packs, walks: walks.toSorted((one, other) => other.packedAt - one.packedAt) };
}

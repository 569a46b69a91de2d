import type { DueKind, DuePlace } from '@sprigline/contract';
import { gradeCheckDue } from '@sprigline/domain';
import type { Waiting } from './all-due.ts';
import type { RankedPlace } from './due-places.queries.ts';
import type { PottedThere } from './due.queries.ts';

/** Things of one kind that are due where one walks, and the nearest of their days. */
interface Heap {
  readonly walkId: string;
  readonly kind: DueKind;
  readonly day: string;
  readonly rank: number;
  readonly n: number;
}

type Places = ReadonlyMap<string, RankedPlace>;

/** One heap a thing, and one a place for potted batches that were added up there. */
export function heapsOf(waiting: readonly Waiting[], pottedThere: readonly PottedThere[], gradeEveryDays: number, placeOf: Places): Heap[] {
  const added = pottedThere.flatMap(({ placeId, batches, oldestLookOn }) => {
    const at = placeOf.get(placeId);
    return at ? { walkId: at.walkId, kind: 'gradeCheck' as const, day: gradeCheckDue(oldestLookOn, gradeEveryDays).dueOn, rank: at.rank, n: batches } : [];
  });
  return [...waiting.map(({ walk, kind, day, rank }) => ({ walkId: walk.id, kind, day, rank, n: 1 })), ...added];
}

/** What is due where one walks, the nearest day first, then in walking order. */
export function placesDue(heaps: readonly Heap[], placeOf: Places): DuePlace[] {
  const walks = gathered(heaps.toSorted(inOrder), ({ walkId }) => walkId);
  return [...walks].flatMap(([id, there]) => {
    const [walk, first] = [placeOf.get(id), there[0]];
    if (!walk || !first) return [];
    const kinds = [...gathered(there, ({ kind }) => kind)].map(([kind, of]) => ({ kind, n: sum(of), day: of[0]?.day ?? first.day }));
    return [{ walk: { id: walk.id, name: walk.name, kind: walk.kind }, path: walk.path, day: first.day, items: sum(there), kinds }];
  });
}

const sum = (heaps: readonly Heap[]): number => heaps.reduce((all, { n }) => all + n, 0);
const inOrder = (a: Heap, b: Heap): number => compare(a.day, b.day) || a.rank - b.rank || compare(a.kind, b.kind);
const compare = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

/** Node 20 has no Map.groupBy. Keeps the order. */
function gathered<K>(heaps: readonly Heap[], keyOf: (heap: Heap) => K): Map<K, Heap[]> {
  const groups = new Map<K, Heap[]>();
  for (const heap of heaps) {
    const there = groups.get(keyOf(heap));
    if (there) there.push(heap);
    else groups.set(keyOf(heap), [heap]);
  }
  return groups;
}

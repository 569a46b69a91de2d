import { HoldShown, Trace } from '@sprigline/contract';
import type { Diary } from './diary.ts';
import type { Tray } from './winter.ts';

const kinOf = ({ batches }: Trace, way: string): string[] => batches.filter((batch) => batch.way === way).map(({ id }) => id).sort();
const trace = async (diary: Diary, query: string): Promise<Trace> => Trace.parse(await diary.get(`trace?limit=500&${query}`, diary.volunteer(6)));

/** Something grows in what stood in a tray: all that came of it is found, held by one act, and freed by the result. */
export async function tracedAndHeld(diary: Diary, trays: readonly Tray[]): Promise<void> {
  const { list } = diary;
  const tray = trays[2]?.batch ?? '';
  diary.on('2026-09-05');
  const { batches } = await trace(diary, `batchId=${tray}`);
  const own = [tray, ...list.kin(tray, 'to')].filter((batch) => list.count(batch) > 0);
  const standing = batches.filter(({ n }) => n > 0).map(({ id }) => id);
  diary.compare('what is left of the line of a tray', standing.toSorted(), own.toSorted());

  const earlier = await heldNow(diary);
  await diary.write([{ kind: 'held', batchIds: standing, reason: 'black roots in the tray it came from', sample: 'H-2' }]);
  diary.compare('what is held', await heldNow(diary), [...new Set([...earlier, ...own])].sort());
  diary.on('2026-09-12');
  // What was held for another reason stays so.
  const freed = standing.filter((batch) => !earlier.includes(batch));
  await diary.write([{ kind: 'released', batchIds: freed, reason: 'nothing grew from the sample', result: 'clear' }]);
  diary.compare('what is held still', await heldNow(diary), earlier);
}

async function heldNow(diary: Diary): Promise<string[]> {
  const holds = HoldShown.array().parse(await diary.get('holds', diary.volunteer(6)));
  return [...new Set(holds.flatMap(({ batches }) => batches.map(({ id }) => id)))].sort();
}

/** Of every batch there ever was: where its plants came from, where they went, how many are there, and the wild trees. */
export async function everyLine(diary: Diary): Promise<void> {
  const { list } = diary;
  const [told, own] = [new Map<string, object>(), new Map<string, object>()];
  for (const { id } of list.batches.values()) {
    const line = await trace(diary, `batchId=${id}`);
    const [from, to] = [list.kin(id, 'from'), list.kin(id, 'to')];
    told.set(id, { itself: kinOf(line, 'itself'), from: kinOf(line, 'from'), to: kinOf(line, 'to'), plants: line.sums.plants, trees: line.donorTrees.map((tree) => tree.id).sort() });
    own.set(id, { itself: [id], from: [...from].sort(), to: [...to].sort(), plants: [id, ...from, ...to].reduce((sum, batch) => sum + list.count(batch), 0), trees: [...list.treesOf([id, ...from])].sort() });
  }
  diary.compare('the line of every batch there was', told, own);
}

import { newId } from '../support/people.ts';
import type { Ground } from './beginning.ts';
import type { Diary, Saying } from './diary.ts';
import { gradeChecks, movesOn, verdicts } from './due.ts';
import { callBySheet, printed } from './sheets.ts';
import { batchOf, type Tray } from './winter.ts';
import { dayAddsUp } from './workday.ts';

export interface Pots {
  /** Young plants of the trays that were sorted, by tray. */
  readonly liners: readonly string[];
  /** Potted plants, by tray; then those that skipped a stage. */
  readonly potted: string[];
}

const SORTED = 16;
const MIXED_UNTIL = 18;

/** Sixteen trays are sorted on one day, each in one act: lifted, back, died, thrown out, and one plant that nobody finds. */
export async function sortTrays(diary: Diary, ground: Ground, trays: readonly Tray[]): Promise<readonly string[]> {
  diary.on('2026-03-21', '17:00');
  const liners = trays.slice(0, SORTED).map(() => newId());
  await countedBeforeItIsThere(diary, liners[0] ?? '', trays[0]?.rooted ?? 0);
  for (const [at, liner] of liners.entries()) {
    const tray = trays[at];
    if (tray) await sortOne(diary, ground, tray, liner, at);
  }
  await movesOn(diary, trays.slice(SORTED));
  await emptiedByACount(diary, trays);
  await lostLabels(diary, ground, trays);
  return liners;
}

/** A phone tells of young plants before the desk has written that they were lifted: kept, and counted once they are there. */
async function countedBeforeItIsThere(diary: Diary, liner: string, n: number): Promise<void> {
  const entry = diary.entry({ kind: 'counted', batchId: liner, alive: n, look: 'lifted', rooted: n }, { minute: 900, clockOffsetSeconds: 1 });
  await diary.send(diary.volunteer(2), [entry], { door: 'outbox' }, ['waiting']);
}

async function sortOne(diary: Diary, ground: Ground, tray: Tray, liner: string, at: number): Promise<void> {
  const { list } = diary;
  const sayings: Saying[] = [{ kind: 'lifted', batchId: tray.batch, toBatchId: liner, n: tray.rooted, placeId: ground.potBench, label: `L${String(at + 1).padStart(2, '0')}` }];
  list.goOn(tray.batch, liner, 'liner', tray.rooted, ground.potBench);
  // The fifteenth is only lifted from: what is left of it is seen three days later.
  if (at !== 14) {
    sayings.push({ kind: 'died', batchId: tray.batch, n: 1, cause: 'rot' }, { kind: 'thrownOut', batchId: tray.batch, n: 1, reason: 'brown to the tip' });
    list.end(tray.batch, 1, 'died rot');
    list.end(tray.batch, 1, 'thrownOut');
    if (at === 13) list.end(tray.batch, 1, 'unaccounted');
    sayings.push({ kind: 'counted', batchId: tray.batch, alive: list.count(tray.batch), look: 'lifted', rooted: 0 });
  }
  const entries = sayings.map((saying, line) => diary.entry(saying, { minute: 540 + at * 5 + line, line: at * 10 + line + 1 }));
  await diary.send(diary.coordinator, entries, { door: 'desk', together: true });
}

/** Somebody finds the tray bare soon after the lift: it is over, and that it was is asked about. */
async function emptiedByACount(diary: Diary, trays: readonly Tray[]): Promise<void> {
  const batch = batchOf(trays, 14);
  diary.on('2026-03-24');
  diary.list.end(batch, diary.list.count(batch), 'notRooted');
  await diary.send(diary.volunteer(6), [diary.entry({ kind: 'counted', batchId: batch, alive: 0, look: 'look' })], { door: 'outbox' });
  diary.mustFlag('called-by-count', batch);
}

/** Two trays lose their labels. Their plants are one lot until some are told by their needles. */
async function lostLabels(diary: Diary, ground: Ground, trays: readonly Tray[]): Promise<void> {
  const [first, second] = [trays[16], trays[17]];
  if (!first || !second) return;
  const { list } = diary;
  const [mixed, young, told, pot] = [newId(), newId(), newId(), newId()];
  diary.on('2026-03-28');
  await diary.write([{ kind: 'mixed', toBatchId: mixed, placeId: ground.trays[16], parts: [{ batchId: first.batch, n: 6 }, { batchId: second.batch, n: 5 }], label: 'M01' }]);
  list.mix([[first.batch, 6], [second.batch, 5]], mixed, ground.trays[16] ?? '');
  diary.on('2026-04-04');
  await diary.write([{ kind: 'died', batchId: mixed, n: 1, cause: 'rot' }]);
  list.end(mixed, 1, 'died rot');
  await diary.write([{ kind: 'lifted', batchId: mixed, toBatchId: young, n: 8, placeId: ground.potBench, label: 'M02' }]);
  list.goOn(mixed, young, 'liner', 8, ground.potBench);
  diary.on('2026-04-11');
  await diary.write([{ kind: 'identified', batchId: young, stickingId: second.sticking, toBatchId: told, n: 3, placeId: ground.potBench, label: 'M03' }]);
  list.identify(young, second.sticking, told, 3, ground.potBench);
  // A pot that stood under the bench without a label: of one of two trees.
  const [sticking, candidates] = [newId(), [first.donor.id, second.donor.id]];
  list.candidates.set(pot, candidates);
  await diary.write([{ kind: 'received', batchId: pot, stickingId: sticking, stage: 'liner', n: 2, source: 'opening', candidates, taxonId: ground.taxonId, placeId: ground.potBench }]);
  list.come(pot, sticking, undefined, 'liner', 2, ground.potBench, 'received');
}

/** Potting day: all young plants at once; one tray goes straight from cutting to pot; what has no roots by May is called. */
export async function pottingDay(diary: Diary, ground: Ground, trays: readonly Tray[], liners: readonly string[]): Promise<Pots> {
  const { list } = diary;
  diary.on('2026-04-18');
  const { id: workdayId } = await diary.make<{ id: string }>('workdays', { day: diary.today, placeId: ground.potBench, tasks: 'Potting day', others: 9, children: 0, hours: 6 });
  const from = [...liners, batchOf(trays, 18)];
  const potted = from.map(() => newId());
  const many = from.map((batch, at) => (at < liners.length ? list.count(batch) - 1 : 5));
  await printed(diary, 'pottingUp', {}, toPot(diary, trays));
  const refused = await diary.send(diary.coordinator, [diary.entry({ kind: 'potted', batchId: from[0], toBatchId: newId(), n: 400, placeId: ground.potBench })], { door: 'desk' }, ['refused']);
  if (!refused[0]?.problem) throw new Error('more were potted than there are');
  await diary.write(from.map((batch, at) => ({ kind: 'potted', batchId: batch, toBatchId: potted[at], n: many[at], placeId: ground.potBench, label: `P${String(at + 1).padStart(2, '0')}` })), { workdayId });
  await dayAddsUp(diary, workdayId, { adults: 9, children: 0, peopleHours: 54, potted: many.reduce((sum, n) => sum + n, 0) });
  from.forEach((batch, at) => list.goOn(batch, potted[at] ?? '', 'potted', many[at] ?? 0, ground.potBench));

  diary.on('2026-05-02');
  const over = [...trays.slice(0, 14), ...trays.slice(15, 16), ...trays.slice(19)].map(({ batch }) => batch).filter((batch) => list.count(batch) > 0);
  await callBySheet(diary, over);
  await verdicts(diary, [...list.batches.values()].filter(({ id, stage }) => stage === 'cutting' && list.count(id) > 0).map(({ id }) => id));
  await gradeChecks(diary, potted);
  return { liners, potted };
}

/** Young plants, and trays with roots in them: of those that plants were mixed from, nobody knows any more. */
function toPot({ list }: Diary, trays: readonly Tray[]): string[] {
  const young = [...list.batches.values()].filter(({ id, stage }) => stage === 'liner' && list.count(id) > 0).map(({ id }) => id);
  return [...young, ...trays.slice(MIXED_UNTIL).map(({ batch }) => batch).filter((batch) => list.count(batch) > 0)];
}

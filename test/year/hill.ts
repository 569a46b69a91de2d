import { newId } from '../support/people.ts';
import type { Ground } from './beginning.ts';
import type { Diary, Saying } from './diary.ts';
import { siteChecks } from './due.ts';
import { keepForReports } from './reports.ts';
import { printed, typedBack } from './sheets.ts';
import type { Pots } from './spring.ts';
import type { Summer } from './summer.ts';
import { dayAddsUp } from './workday.ts';

/** Forty people plant on two plots; a check in the next summer misses some, and in autumn some of these again. */
export async function hill(diary: Diary, ground: Ground, { potted }: Pots, { returned, held }: Summer): Promise<readonly string[]> {
  const trees = await plantingDay(diary, ground, [...potted.filter((batch) => batch !== held), returned]);
  await siteChecks(diary);
  await firstCheck(diary, ground, trees);
  await siteChecks(diary);
  keepForReports(diary, ground);
  await secondCheck(diary, trees);
  await siteChecks(diary);
  return trees;
}

async function plantingDay(diary: Diary, ground: Ground, from: readonly string[]): Promise<readonly string[]> {
  const { list } = diary;
  diary.on('2026-10-10');
  const { id: workdayId } = await diary.make<{ id: string }>('workdays', { day: diary.today, placeId: ground.site, tasks: 'Planting', others: 34, children: 6, hours: 5 });
  const trees = from.map(() => newId());
  const many = from.map((batch) => list.count(batch) - 1);
  const plotOf = (at: number): string => ground.plots[at % 2 === 0 ? 0 : 1];
  const sayings = from.map((batchId, at): Saying => ({
    kind: 'planted', batchId, toBatchId: trees[at], n: many[at], placeId: plotOf(at), label: `H${String(at + 1).padStart(2, '0')}`,
    positions: Array.from({ length: many[at] ?? 0 }, (_, place) => `r${at + 1} c${place + 1}`),
  }));
  await printed(diary, 'plantingDay', { toPlaceId: ground.site }, from);
  await diary.write(sayings, { workdayId });
  await dayAddsUp(diary, workdayId, { adults: 34, children: 6, peopleHours: 170, planted: many.reduce((sum, n) => sum + n, 0) });
  from.forEach((batch, at) => list.goOn(batch, trees[at] ?? '', 'planted', many[at] ?? 0, plotOf(at)));
  return trees;
}

/** On the sheet that was printed for the site, and typed back at home. */
async function firstCheck(diary: Diary, ground: Ground, trees: readonly string[]): Promise<void> {
  const { list } = diary;
  diary.on('2027-07-10');
  const sheet = await printed(diary, 'siteCheck', { placeId: ground.site }, trees);
  const lines = trees.map((batch, at) => {
    const dead = at % 4 === 0 ? 1 : 0;
    const notFound = at % 3 === 0 ? 2 : 0;
    list.end(batch, dead, 'died browsed');
    const alive = list.count(batch) - notFound;
    list.missAtCheck(batch, notFound);
    return { number: sheet.numberOf(batch), alive, notFound, dead: dead > 0 ? [{ n: dead, cause: 'browsed', certainty: 'seen' }] : [] };
  });
  await typedBack(diary, sheet, lines);
  // A plot as a whole, its batches not told apart: it moves nothing.
  await diary.write([{ kind: 'checked', placeId: ground.plots[0], alive: 40 }]);
}

/** All are looked at. Of those missed, every second batch is missed again, the others stand in the bracken after all. */
async function secondCheck(diary: Diary, trees: readonly string[]): Promise<void> {
  const { list } = diary;
  diary.on('2027-09-18');
  const sayings = trees.map((batch, at): Saying => {
    const missed = at % 6 === 0 ? 2 : 0;
    const alive = list.count(batch) - missed;
    if (missed > 0) diary.mustFlag('not-found-twice', batch);
    list.end(batch, missed, 'unaccounted');
    list.missAtCheck(batch, 0);
    return { kind: 'checked', batchId: batch, alive, notFound: missed };
  });
  await diary.write(sayings);
}

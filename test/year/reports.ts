import { FunderReport, HandoverReport, LandownerReport } from '@sprigline/contract';
import type { Ground } from './beginning.ts';
import type { Diary } from './diary.ts';
import { last, type Plant, STAGES, type Stage } from './plant-list.ts';

/** What reports must say as of a day. */
export interface Figures {
  readonly day: string;
  /** By donor tree. */
  readonly trees: ReadonlyMap<string, ReturnType<typeof ofTree>>;
  readonly planted: ReturnType<typeof ofPlanted>;
}

/** Noted down on the day itself, once all that was told of it has come. */
export function keepForReports(diary: Diary, ground: Ground): void {
  const { plants } = diary.list;
  diary.figures.push({ day: diary.today, trees: new Map(ground.donors.map(({ id }) => [id, ofTree(plants.filter(({ donor }) => donor === id))])), planted: ofPlanted(plants) });
}

const CAME_OF = ['stuck', 'received', 'found', 'rooted', 'potted', 'planted', 'lost', 'givenOut', 'mixedAway', 'alive', 'aliveBy'] as const;
const LOST = new Set(['unaccounted', 'notRooted', 'thrownOut']);

/** Plants whose family cannot be told at the moment are away, whatever becomes of them. */
function ofTree(plants: readonly Plant[]) {
  const n = (is: (plant: Plant) => boolean): number => plants.filter(is).length;
  const known = plants.filter((plant) => last(plant).sticking !== undefined);
  const here = (stage?: Stage): number => known.filter((plant) => last(plant).end === 'here' && (stage === undefined || last(plant).stage === stage)).length;
  const went = (to: Stage): number => n(({ steps }) => steps.some(({ stage, sticking, how }, at) => at > 0 && stage === to && sticking !== undefined && how === 'came'));
  return {
    stuck: n(({ origin }) => origin === 'stuck'), received: n(({ origin }) => origin === 'received'), found: n(({ origin }) => origin === 'found'),
    rooted: n(({ steps }) => steps.some(({ stage, end, sticking }) => stage === 'cutting' && end === 'goneOn' && sticking !== undefined)),
    potted: went('potted'), planted: went('planted'),
    lost: known.filter((plant) => LOST.has(last(plant).end) || last(plant).end.startsWith('died ')).length,
    givenOut: n((plant) => last(plant).end === 'givenOut'), mixedAway: plants.length - known.length,
    alive: here(), aliveBy: Object.fromEntries(STAGES.map((stage) => [stage, here(stage)])),
  };
}

/** Both rates: trees not found taken as dead, and left out. */
function ofPlanted(plants: readonly Plant[]) {
  const planted = plants.filter(({ steps }) => steps.some(({ stage }) => stage === 'planted'));
  const here = planted.filter((plant) => last(plant).end === 'here');
  const notFound = here.filter((plant) => plant.notFound).length;
  const [alive, dead] = [here.length - notFound, planted.length - here.length];
  return { planted: planted.length, alive, dead, notFound, donors: new Set(planted.map(({ donor }) => donor)).size, low: alive / (alive + dead + notFound), high: alive / (alive + dead) };
}

/** What is read at the end of the second year, as of the days on which it was noted down. */
export async function reportsOfThoseDays(diary: Diary, ground: Ground): Promise<void> {
  for (const { day, trees, planted } of diary.figures) {
    for (const standId of new Set(ground.donors.map((donor) => donor.standId))) {
      const report = LandownerReport.parse(await diary.get(`reports/landowner?standId=${standId}&asOf=${day}`, diary.volunteer(1)));
      const told = report.trees.map((tree) => [tree.id, Object.fromEntries(CAME_OF.map((name) => [name, tree[name]]))] as const);
      diary.compare(`to the landowner, as of ${day}`, new Map(told), new Map(ground.donors.filter((donor) => donor.standId === standId).map(({ id }) => [id, trees.get(id)])));
    }
    const { rows } = FunderReport.parse(await diary.get(`reports/funder?asOf=${day}`, diary.volunteer(1)));
    const told = rows.map(({ site, season, planted: n, alive, dead, notFound, donors, rates }) => ({ site, season, planted: n, alive, dead, notFound, donors, low: rates?.low, high: rates?.high ?? rates?.low }));
    diary.compare(`to the funder, as of ${day}`, told, planted.planted === 0 ? [] : [{ site: 'Lowmire Wood', season: '2026/27', ...planted }]);
  }
}

/** For the next coordinator, as it is on that day. */
export async function handedOver(diary: Diary, ground: Ground): Promise<void> {
  const { list } = diary;
  const { places, held, reviews, unstuck, permissions } = HandoverReport.parse(await diary.get('reports/handover'));
  const elsewhere = [...ground.plots, ground.school.bed];
  const at = (is: (place: string) => boolean): number => [...list.batches.values()].filter(({ place }) => is(place)).reduce((sum, { id }) => sum + list.count(id), 0);
  const toldAt = (name: string): number | undefined => places.find((place) => place.name === name)?.plants;
  diary.compare('where the plants are', ['House A', 'Lowmire Wood', 'School garden'].map(toldAt), [
    at((place) => !elsewhere.includes(place)), at((place) => place === ground.plots[0] || place === ground.plots[1]), at((place) => place === ground.school.bed),
  ]);
  diary.compare('what is held', held.map(({ id, n }) => `${id} ${n}`).sort(), [...list.batches.values()].filter((batch) => batch.held && list.count(batch.id) > 0).map(({ id }) => `${id} ${list.count(id)}`).sort());
  const codes = diary.flags.map((flag) => flag.split(' ')[0] ?? '');
  diary.compare('what waits for a decision', Object.fromEntries(reviews.map(({ code, n }) => [code, n])), Object.fromEntries(codes.map((code) => [code, codes.filter((one) => one === code).length])));
  diary.compare('all is stuck', unstuck, []);
  diary.compare('what was collected', (permissions ?? []).map(({ used }) => used), diary.today < '2027' ? [ground.donors.length * 20] : []);
}

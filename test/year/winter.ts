import { newId } from '../support/people.ts';
import type { Donor, Ground } from './beginning.ts';
import type { Diary, Sent } from './diary.ts';
import { dueWhereTheTraysAre, firstChecks } from './due.ts';
import { wentWrong } from './incidents.ts';
import { dayAddsUp } from './workday.ts';

/** A tray on sticking night: its batch, its sticking, and how many were felt to be rooted in February. */
export interface Tray {
  readonly batch: string;
  readonly sticking: string;
  readonly donor: Donor;
  readonly place: string;
  rooted: number;
}

const CUTTINGS = 20;
const WEEK_MS = 604_800_000;

/** Four hundred cuttings are stuck by twelve people and three children, each with a phone or a pencil. */
export async function stickingNight(diary: Diary, ground: Ground): Promise<Tray[]> {
  diary.on('2025-10-11', '19:00');
  const { id: workdayId } = await diary.make<{ id: string }>('workdays', { day: diary.today, placeId: ground.bench, tasks: 'Sticking night', personIds: diary.volunteers.map(({ personId }) => personId), children: 3, hours: 3.5 });
  const trays = ground.donors.map((donor, at): Tray => ({ batch: newId(), sticking: newId(), donor, place: ground.trays[at] ?? '', rooted: 0 }));
  for (const [at, tray] of trays.entries()) {
    const saying = {
      kind: 'stuck', batchId: tray.batch, stickingId: tray.sticking, bundleId: tray.donor.bundleId, n: CUTTINGS, placeId: tray.place, recipeVersionId: ground.recipe,
      label: `T${String(at + 1).padStart(2, '0')}`, damaged: at === 3 ? [{ n: 1, how: 'torn' }] : [],
    };
    await diary.send(diary.volunteer(at), [diary.entry(saying, { workdayId, line: at + 1 })], { door: 'outbox' });
    diary.list.come(tray.batch, tray.sticking, tray.donor.id, 'cutting', CUTTINGS, tray.place);
  }
  await dayAddsUp(diary, workdayId, { adults: 12, children: 3, peopleHours: 42, stuck: trays.length * CUTTINGS });
  return trays;
}

/** What befalls some trays in some weeks, before that week's round sees it. */
const EVENTS: Readonly<Record<string, (diary: Diary, trays: readonly Tray[], dead: Map<string, [number, string]>) => void>> = {
  // The timer stuck for two nights.
  '2025-12-13': (_, trays, dead) => trays.slice(0, 4).forEach(({ batch }) => dead.set(batch, [3, 'dry'])),
  '2026-01-17': (_, trays, dead) => dead.set(batchOf(trays, 7), [4, 'mould']),
  // Two lie under the bench for a week.
  '2026-01-31': ({ list }, trays) => list.end(batchOf(trays, 9), 2, 'unaccounted'),
  '2026-02-07': ({ list }, trays) => list.comeBack(batchOf(trays, 9), 2),
  // One more than anybody knew of.
  '2026-02-14': (diary, trays) => {
    const tray = trays[11];
    if (!tray) return;
    diary.list.come(tray.batch, tray.sticking, tray.donor.id, 'cutting', 1, tray.place, 'found');
    diary.mustFlag('found-by-count', tray.batch);
  },
  '2026-02-21': ({ list }, trays) => list.end(batchOf(trays, 12), 1, 'unaccounted'),
};

export const batchOf = (trays: readonly Tray[], at: number): string => trays[at]?.batch ?? '';

/** Every Saturday four people walk the bench. Some send at once, some two weeks late; some twice. */
export async function winterRounds(diary: Diary, ground: Ground, trays: readonly Tray[]): Promise<void> {
  for (let week = 0; week < 22; week += 1) {
    diary.on(new Date(Date.parse('2025-10-18T00:00:00Z') + week * WEEK_MS).toISOString().slice(0, 10));
    await troubles(diary, ground);
    const dead = new Map<string, [number, string]>();
    EVENTS[diary.today]?.(diary, trays, dead);
    trays.forEach(({ batch }, at) => {
      if ((week * 5 + at * 3) % 17 === 0 && !dead.has(batch)) dead.set(batch, [1, week % 2 === 0 ? 'rot' : 'dry']);
    });
    for (let walker = 0; walker < 4; walker += 1) {
      const late = (week + walker) % 4 === 0 ? 15 : 0;
      const entries = trays.slice(walker * 5, walker * 5 + 5).map((tray, at) => seen(diary, tray, dead.get(tray.batch), 600 + walker * 10 + at));
      diary.keepOnPhone(diary.volunteer(week + walker * 3), entries, new Date(diary.now.getTime() + late * 86_400_000).toISOString().slice(0, 10));
    }
    if (diary.today === '2026-01-24') twoAtOneTray(diary, trays, dead);
    await diary.phonesFindSignal();
    await dueWhereTheTraysAre(diary, ground);
    await firstChecks(diary, trays);
  }
  diary.on('2026-03-20');
  await diary.phonesFindSignal();
  await secondThoughts(diary, trays);
  await wentWrong(diary, ground, trays);
}

/** The round tells what lives, and what was found dead; first tugs at the end of February tell roots. */
function seen(diary: Diary, tray: Tray, dead: readonly [number, string] | undefined, minute: number): Sent {
  if (dead) diary.list.end(tray.batch, dead[0], `died ${dead[1]}`);
  const alive = diary.list.count(tray.batch);
  const isTugged = diary.today === '2026-02-28';
  if (isTugged) tray.rooted = Math.floor(alive * 0.6);
  return diary.entry(
    {
      kind: 'counted', batchId: tray.batch, alive, look: isTugged ? 'tug' : 'look', ...(isTugged && { rooted: tray.rooted }),
      dead: dead ? [{ n: dead[0], cause: dead[1], certainty: 'seen' }] : [],
    },
    { minute, clockOffsetSeconds: 2 },
  );
}

/** The mist timer fails in December; in January there is mould, and somebody treats it. */
async function troubles(diary: Diary, ground: Ground): Promise<void> {
  const mouldy = ground.trays[7] ?? '';
  if (diary.today === '2025-12-13') {
    await diary.write([{ kind: 'incident', placeId: ground.bench, what: 'timerFailed', severity: 'serious', lastGoodOn: '2025-12-10', untilDay: '2025-12-12', detail: 'The mist timer stuck.' }]);
  }
  if (diary.today === '2026-01-17') {
    await diary.write([
      { kind: 'incident', placeId: mouldy, what: 'mould', severity: 'slight', untilDay: '2026-01-17' },
      { kind: 'treated', placeId: mouldy, what: 'vented' },
    ]);
  }
}

/** Two more look at a tray on that day and differ; the strongest look holds, with the dead that it tells, and somebody has to decide. */
function twoAtOneTray(diary: Diary, trays: readonly Tray[], died: ReadonlyMap<string, readonly [number, string]>): void {
  const batch = batchOf(trays, 5);
  const [n, cause] = died.get(batch) ?? [0, ''];
  const dead = n > 0 ? [{ n, cause, certainty: 'seen' }] : [];
  const alive = diary.list.count(batch);
  diary.keepOnPhone(diary.volunteer(8), [diary.entry({ kind: 'counted', batchId: batch, alive, look: 'tug', dead }, { minute: 660, clockOffsetSeconds: 0 })], '2026-01-24');
  diary.keepOnPhone(diary.volunteer(9), [diary.entry({ kind: 'counted', batchId: batch, alive: alive - 1, look: 'look' }, { minute: 665, clockOffsetSeconds: 0 })], '2026-01-27');
  diary.mustFlag('two-readings', batch);
}

/** Something typed at the wrong tray is taken back, a slip of the finger is mended. */
async function secondThoughts(diary: Diary, trays: readonly Tray[]): Promise<void> {
  const [wrong] = await diary.write([{ kind: 'died', batchId: batchOf(trays, 3), n: 2, cause: 'rot' }]);
  await diary.write([{ kind: 'withdrawn', entryId: wrong?.id, sawVersion: wrong?.id, reason: 'it was another tray' }]);
  const alive = diary.list.count(batchOf(trays, 4));
  const slip = { kind: 'counted', batchId: batchOf(trays, 4), alive: alive - 9, look: 'look' };
  const [typed] = await diary.write([slip]);
  await diary.write([{ kind: 'replaced', entryId: typed?.id, sawVersion: typed?.id, reason: 'a slip of the finger', instead: { observedOn: diary.today, saying: { ...slip, alive } } }]);
}

import { expect, test } from 'vitest';
import { testApi } from '../../../../test/support/api.ts';
import { Desk, nursery } from '../../../../test/support/nursery.ts';
import { newId } from '../../../../test/support/people.ts';
import { Database } from '../database/database.ts';
import { type FollowedSticking, FollowedQueries } from './followed.queries.ts';

const api = await testApi();
const place = await nursery(api);
const desk = new Desk(api, place);
const caller = { programmeId: place.programmeId, personId: place.coordinator.personId, role: 'coordinator' } as const;

/** All stickings of the programme, as the curves see them, and how often the database was asked. */
async function followed(): Promise<{ stickings: FollowedSticking[]; roundTrips: number }> {
  return api.app.get(Database).inTransaction(caller as never, async (sql) => {
    const before = sql.roundTrips;
    const stickings = await api.app.get(FollowedQueries).of(sql, place.programmeId, { by: 'donor' });
    return { stickings, roundTrips: sql.roundTrips - before };
  });
}
const of = (stickings: readonly FollowedSticking[], id: string) =>
  stickings.find(({ stickingId }) => stickingId === id)?.followed.map(({ from, unrootedAt, aliveAt, by, end, plants }) => [plants, end, from, unrootedAt, aliveAt, by]).sort();

test('entries become days between looks: counts, deaths, a lift, a move, a correction and the verdict', async () => {
  const [first, second] = [await desk.stick(20), await desk.stick(10, { bundleId: place.bundles[1], placeId: place.trays[1] })];
  const [moved, wrong] = [newId(), desk.entry('2026-01-30', { kind: 'counted', batchId: second.batchId, alive: 10, look: 'tug', rooted: 9 })];
  await desk.write([
    desk.entry('2025-12-01', { kind: 'counted', batchId: first.batchId, alive: 18, look: 'look', dead: [{ n: 2, cause: 'rot', certainty: 'seen' }] }),
    desk.entry('2026-01-10', { kind: 'counted', batchId: first.batchId, alive: 18, look: 'tug', rooted: 6 }),
    desk.entry('2026-01-10', { kind: 'moved', batchId: first.batchId, toBatchId: moved, n: 8, rooted: 2, placeId: place.trays[2] }),
    desk.entry('2026-02-09', { kind: 'lifted', batchId: moved, toBatchId: newId(), n: 5, placeId: place.bench }),
    wrong,
    desk.entry('2026-01-31', { kind: 'withdrawn', entryId: wrong.id, sawVersion: wrong.id, reason: 'another tray' }),
    desk.entry('2026-02-09', { kind: 'counted', batchId: second.batchId, alive: 10, look: 'lifted', rooted: 1 }),
    desk.entry('2026-02-10', { kind: 'called', batchId: second.batchId, n: 9 }),
  ]);
  const { stickings, roundTrips } = await followed();

  expect(roundTrips).toBe(1);
  // Stuck on 2025-10-02: the count is on day 60, the tug on 100, the lift on 130. Of the six moved without roots three rooted.
  expect(of(stickings, first.stickingId)).toEqual([
    [2, 'lost', 0, 0, 0, 60], [3, 'rooted', 0, 100, 100, 130], [6, 'rooted', 0, 0, 0, 100], [9, 'waiting', 0, 100, 100, 100],
  ]);
  expect(of(stickings, second.stickingId)).toEqual([[1, 'rooted', 0, 0, 0, 130], [9, 'called', 0, 131, 131, 131]]);
  expect(stickings.map(({ name, stuckOn }) => [name, stuckOn])).toEqual(expect.arrayContaining([['CR-1', '2025-10-02'], ['CR-2', '2025-10-02']]));
});

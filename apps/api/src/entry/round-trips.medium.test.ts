import { expect, test } from 'vitest';
import { Database } from '../database/database.ts';
import { testApi } from '../../../../test/support/api.ts';
import { Desk, nursery } from '../../../../test/support/nursery.ts';
import { newId } from '../../../../test/support/people.ts';
import { LedgerWriter } from './ledger-writer.ts';
import { NewEntry } from '@sprigline/contract';

const api = await testApi();
const place = await nursery(api);
const desk = new Desk(api, place);
const MOST = 6;

const author = { programmeId: place.programmeId, personId: place.coordinator.personId, role: 'coordinator' as const, deliveredBy: 'session x', zone: 'Europe/London' };

/** Round trips inside the unit of work, with all entries written. */
async function roundTripsOf(entries: object[], door: 'desk' | 'outbox' = 'desk'): Promise<number> {
  return api.app.get(Database).inTransaction({ ...author, seesExact: true }, async (sql) => {
    const items = await api.app.get(LedgerWriter).write(sql, author, { door, entries: NewEntry.array().parse(entries), confirm: new Set() });
    expect(new Set(items.map(({ status }) => status))).toEqual(new Set(['written']));
    return sql.roundTrips;
  });
}

test('one entry and five hundred take the same three round trips', async () => {
  const { batchId } = await desk.stick(1000);
  const died = () => desk.entry('2026-03-01', { kind: 'died', batchId, n: 1, cause: 'dry' });
  expect(await roundTripsOf([died()])).toBe(3);
  expect(await roundTripsOf(Array.from({ length: 500 }, died), 'outbox')).toBe(3);

  const stuck = () => desk.entry('2025-10-02', { kind: 'stuck', batchId: newId(), stickingId: newId(), n: 5, placeId: place.trays[0], bundleId: place.bundles[0] });
  expect(await roundTripsOf(Array.from({ length: 500 }, stuck))).toBe(3);
});

test('corrections and holds stay within six', async () => {
  const { batchId, entryId } = await desk.stick(10);
  const died = desk.entry('2026-03-01', { kind: 'died', batchId, n: 1, cause: 'dry' });
  await desk.write([died]);
  const withdrawn = desk.entry('2026-03-02', { kind: 'withdrawn', entryId: died.id, sawVersion: died.id, reason: 'x' });
  const held = desk.entry('2026-03-02', { kind: 'held', placeId: place.house, reason: 'x' });
  expect(await roundTripsOf([withdrawn, held], 'outbox')).toBeLessThanOrEqual(MOST);
  expect(entryId).toBeDefined();
});

test('reading a batch takes three, with what happened where it stood; a round two; a list and a descent one each', async () => {
  const { batchId } = await desk.stick(10);
  const trips: number[] = [];
  const database = api.app.get(Database);
  const original = database.inTransaction.bind(database);
  database.inTransaction = (context, work) => original(context, async (sql) => {
    const answer = await work(sql);
    trips.push(sql.roundTrips);
    return answer;
  });
  for (const path of [`batches/${batchId}`, 'batches', `places/${place.house}/round`, `donor-trees/${place.donors[0]}/descent`, 'review']) {
    expect((await desk.get(path)).status).toBe(200);
  }
  expect(trips).toEqual([3, 1, 2, 1, 1]);
});

import { describe, expect, test } from 'vitest';
import { testApi } from '../../../../test/support/api.ts';
import { Desk, nursery } from '../../../../test/support/nursery.ts';
import { asOwner, newId } from '../../../../test/support/people.ts';

const api = await testApi();
const place = await nursery(api);
const desk = new Desk(api, place);

const balanceOf = (batchId: string) =>
  asOwner(api, async (sql) => {
    const { rows } = await sql.query<{ balance: number }>('SELECT balance FROM batch_state WHERE batch_id = $1', [batchId]);
    return rows[0]?.balance;
  });

const statusOf = async (saying: Record<string, unknown>, day = '2026-03-01') => (await desk.write([desk.entry(day, saying)]))[0];

describe('what each kind of entry does to the books', () => {
  test('stuck opens a sticking and its batch', async () => {
    const { batchId } = await desk.stick(60);
    expect(await balanceOf(batchId)).toBe(60);
  });

  test('received opens a batch at its stage', async () => {
    const batchId = newId();
    const item = await statusOf({ kind: 'received', batchId, stickingId: newId(), stage: 'potted', n: 12, source: 'opening', donorTreeId: place.donors[0], placeId: place.bench });
    expect(item).toMatchObject({ status: 'written' });
    expect(await balanceOf(batchId)).toBe(12);
  });

  test.each([
    ['counted', { kind: 'counted', alive: 55, look: 'tug', rooted: 20, dead: [{ n: 3, cause: 'rot' }] }, 55],
    ['died', { kind: 'died', n: 4, cause: 'dry' }, 56],
    ['thrownOut', { kind: 'thrownOut', n: 5, reason: 'mould' }, 55],
    ['called', { kind: 'called', n: 60 }, 0],
    ['noted', { kind: 'noted', text: 'looked over' }, 60],
    ['treated', { kind: 'treated', what: 'water' }, 60],
    ['held', { kind: 'held', reason: 'browning tips' }, 60],
  ])('%s', async (_, saying, balance) => {
    const { batchId } = await desk.stick(60);
    expect(await statusOf({ ...saying, batchId })).toMatchObject({ status: 'written' });
    expect(await balanceOf(batchId)).toBe(balance);
  });

  test.each([
    ['lifted', 'liner'],
    ['potted', 'potted'],
    ['planted', 'planted'],
  ])('%s takes plants on to %s', async (kind) => {
    const { batchId } = await desk.stick(60);
    const toBatchId = newId();
    expect(await statusOf({ kind, batchId, toBatchId, n: 25, placeId: place.bench })).toMatchObject({ status: 'written' });
    expect([await balanceOf(batchId), await balanceOf(toBatchId)]).toEqual([35, 25]);
  });

  test('moved carries a whole batch, or splits it', async () => {
    const { batchId } = await desk.stick(60);
    const toBatchId = newId();
    await desk.write([
      desk.entry('2026-03-01', { kind: 'moved', batchId, placeId: place.trays[1] }),
      desk.entry('2026-03-02', { kind: 'moved', batchId, placeId: place.trays[2], toBatchId, n: 20 }),
    ]);
    expect([await balanceOf(batchId), await balanceOf(toBatchId)]).toEqual([40, 20]);
  });

  test('restuck starts a second try of the same donor tree', async () => {
    const { batchId, stickingId } = await desk.stick(60);
    const again = { toBatchId: newId(), stickingId: newId() };
    expect(await statusOf({ kind: 'restuck', batchId, n: 10, placeId: place.trays[1], ...again })).toMatchObject({ status: 'written' });
    const { rows } = await asOwner(api, (sql) => sql.query('SELECT second_try_of_id, donor_tree_id FROM sticking WHERE id = $1', [again.stickingId]));
    expect(rows).toEqual([{ second_try_of_id: stickingId, donor_tree_id: place.donors[0] }]);
    expect(await balanceOf(again.toBatchId)).toBe(10);
  });

  test('givenOut goes outside, or into the hands of a partner, who may see it then', async () => {
    const { batchId } = await desk.stick(60);
    const toBatchId = newId();
    await desk.write([
      desk.entry('2026-03-01', { kind: 'givenOut', batchId, n: 10, outside: 'a school' }),
      desk.entry('2026-03-02', { kind: 'givenOut', batchId, n: 20, partnerId: place.partnerId, toBatchId, placeId: place.house }),
    ]);
    expect([await balanceOf(batchId), await balanceOf(toBatchId)]).toEqual([30, 20]);
    const { rows } = await asOwner(api, (sql) => sql.query('SELECT relation FROM batch_partner WHERE batch_id = $1 ORDER BY 1', [toBatchId]));
    expect(rows).toEqual([{ relation: 'hands' }, { relation: 'stand' }]);
  });

  test('found is flagged', async () => {
    const { batchId } = await desk.stick(60);
    expect(await statusOf({ kind: 'found', batchId, n: 2, reason: 'under the bench' })).toMatchObject({ status: 'written', flags: [{ code: 'found-told', n: 2 }] });
    expect(await balanceOf(batchId)).toBe(62);
  });

  test('mixed makes one batch of several, identified takes plants out of it', async () => {
    const [one, two] = [await desk.stick(30), await desk.stick(30, { bundleId: place.bundles[1] })];
    const [mixedId, knownId] = [newId(), newId()];
    const items = await desk.write([
      desk.entry('2026-03-01', { kind: 'mixed', toBatchId: mixedId, placeId: place.trays[2], parts: [{ batchId: one.batchId, n: 30 }, { batchId: two.batchId, n: 10 }] }),
      desk.entry('2026-03-02', { kind: 'identified', batchId: mixedId, stickingId: two.stickingId, toBatchId: knownId, n: 4, placeId: place.trays[2] }),
    ]);
    expect(items.map(({ status }) => status)).toEqual(['written', 'written']);
    expect([await balanceOf(one.batchId), await balanceOf(two.batchId), await balanceOf(mixedId), await balanceOf(knownId)]).toEqual([0, 20, 36, 4]);
  });

  test('checked books only the dead', async () => {
    const { batchId } = await desk.stick(60);
    const toBatchId = newId();
    await desk.write([desk.entry('2026-03-01', { kind: 'planted', batchId, toBatchId, n: 40, placeId: place.plot })]);
    await statusOf({ kind: 'checked', batchId: toBatchId, alive: 30, dead: [{ n: 4, cause: 'browsed' }], notFound: 6 }, '2026-06-01');
    expect(await balanceOf(toBatchId)).toBe(36);
  });

  test('incident and a note stand on places and donor trees', async () => {
    const items = await desk.write([
      desk.entry('2026-01-10', { kind: 'incident', placeId: place.house, what: 'timerFailed', severity: 'serious', lastGoodOn: '2026-01-08' }),
      desk.entry('2026-01-10', { kind: 'noted', donorTreeId: place.donors[0], text: 'browsed by deer' }),
      desk.entry('2026-01-10', { kind: 'noted', tripId: place.tripId, text: 'cold and wet' }),
    ]);
    expect(items.map(({ status }) => status)).toEqual(['written', 'written', 'written']);
  });

  test('a hold on a bench reaches what stands in its trays, and a release lets it go', async () => {
    const { batchId } = await desk.stick(60, { placeId: place.trays[1] });
    await statusOf({ kind: 'held', placeId: place.bench, reason: 'dieback in the next house' }, '2026-09-01');
    expect(await statusOf({ kind: 'lifted', batchId, toBatchId: newId(), n: 5, placeId: place.bench }, '2026-09-02')).toMatchObject({
      status: 'refused', problem: { type: '/problems/batch/held', status: 409 },
    });
    await statusOf({ kind: 'released', placeId: place.bench, reason: 'result came back clean' }, '2026-09-03');
    expect(await statusOf({ kind: 'lifted', batchId, toBatchId: newId(), n: 5, placeId: place.bench }, '2026-09-04')).toMatchObject({ status: 'written' });
  });

  test('withdrawn takes an entry out of the books, replaced changes its numbers', async () => {
    const { batchId, entryId } = await desk.stick(60);
    const died = desk.entry('2026-03-01', { kind: 'died', batchId, n: 6, cause: 'dry' });
    await desk.write([died]);
    await statusOf({ kind: 'withdrawn', entryId: died.id, sawVersion: died.id, reason: 'another tray' });
    expect(await balanceOf(batchId)).toBe(60);

    const instead = { observedOn: '2025-10-02', saying: { kind: 'stuck', batchId, stickingId: newId(), n: 58, placeId: place.trays[0], bundleId: place.bundles[0] } };
    expect(await statusOf({ kind: 'replaced', entryId, sawVersion: entryId, reason: 'two fell out', instead })).toMatchObject({ status: 'refused' });
  });
});

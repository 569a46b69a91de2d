import { expect, test } from 'vitest';
import { testApi } from '../../../../test/support/api.ts';
import { Desk, nursery } from '../../../../test/support/nursery.ts';
import { newId } from '../../../../test/support/people.ts';

const api = await testApi();
const place = await nursery(api);
const desk = new Desk(api, place);

const holds = async () => (await desk.get('holds')).body;

test('what is held stands there with its reason, and is gone once it is released', async () => {
  expect(await holds()).toEqual([]);
  const one = await desk.stick(10, { label: 'H-1' });
  const inTray = await desk.stick(20, { label: 'H-2', placeId: place.trays[1] });
  await desk.write([
    desk.entry('2026-01-05', { kind: 'held', batchId: one.batchId, reason: 'black bases', sample: 'S-7' }),
    desk.entry('2026-01-06', { kind: 'held', placeId: place.trays[1], reason: 'mould all over' }),
  ]);
  expect(await holds()).toMatchObject([
    { subject: 'place', subjectId: place.trays[1], subjectName: 'T2', reason: 'mould all over', plants: 20, batches: [{ id: inTray.batchId, label: 'H-2' }] },
    { subject: 'batch', subjectId: one.batchId, reason: 'black bases', sample: 'S-7', heldOn: '2026-01-05', by: place.coordinator.name, plants: 10, batches: [{ label: 'H-1' }] },
  ]);

  await desk.write([desk.entry('2026-02-01', { kind: 'released', placeId: place.trays[1], reason: 'clean again', result: 'nothing found' })]);
  expect((await holds()).map(({ subject }: { subject: string }) => subject)).toEqual(['batch']);
});

test('a return arrives held and says so', async () => {
  const batchId = newId();
  await desk.write([desk.entry('2026-03-01', { kind: 'received', batchId, stickingId: newId(), stage: 'potted', n: 4, source: 'return', donorTreeId: place.donors[0], placeId: place.bench, label: 'H-3' })]);
  expect(await holds()).toMatchObject([{ subject: 'return', subjectId: null, reason: null, plants: 4, batches: [{ label: 'H-3' }] }, { subject: 'batch' }]);
  expect((await desk.write([desk.entry('2026-03-02', { kind: 'planted', batchId, n: 1, toBatchId: newId(), placeId: place.plot })]))[0]).toMatchObject({ status: 'refused', problem: { type: '/problems/batch/held' } });
});

test('a tray held for two reasons stays held when one of them ends, and says which is left', async () => {
  const { batchId } = await desk.stick(10, { label: 'H-4', placeId: place.trays[2] });
  const forMould = desk.entry('2026-01-05', { kind: 'held', batchId, reason: 'mould' });
  await desk.write([forMould, desk.entry('2026-01-06', { kind: 'held', placeId: place.trays[2], reason: 'sample sent' })]);
  const reasons = async () => (await holds()).filter(({ batches }: { batches: { id: string }[] }) => batches.some(({ id }) => id === batchId)).map(({ reason }: { reason: string }) => reason);
  expect(await reasons()).toEqual(['sample sent', 'mould']);

  await desk.write([desk.entry('2026-01-07', { kind: 'released', batchId, reason: 'wiped off', holdId: forMould.id })]);
  expect(await reasons()).toEqual(['sample sent']);
  expect((await desk.write([desk.entry('2026-01-08', { kind: 'lifted', batchId, n: 1, toBatchId: newId(), placeId: place.bench })]))[0]).toMatchObject({ problem: { type: '/problems/batch/held' } });

  await desk.write([desk.entry('2026-01-09', { kind: 'released', batchId, reason: 'clean' })]);
  expect(await reasons()).toEqual([]);
});

test('a mixed batch says of which stickings its plants may be, also after it was split', async () => {
  const [a, b] = [await desk.stick(10, { label: 'M-1' }), await desk.stick(10, { label: 'M-2', bundleId: place.bundles[1] })];
  const [mixture, part] = [newId(), newId()];
  await desk.write([
    desk.entry('2026-03-01', { kind: 'mixed', toBatchId: mixture, placeId: place.trays[2], parts: [{ batchId: a.batchId, n: 4 }, { batchId: b.batchId, n: 4 }] }),
    desk.entry('2026-03-02', { kind: 'moved', batchId: mixture, toBatchId: part, n: 3, placeId: place.trays[0] }),
  ]);
  const expected = [{ id: a.stickingId, donorTree: { label: 'CR-1' }, fromLabel: 'M-1' }, { id: b.stickingId, donorTree: { label: 'CR-2' }, fromLabel: 'M-2' }];
  for (const id of [mixture, part]) expect((await desk.get(`batches/${id}/possible-stickings`)).body).toMatchObject(expected);
});

import type { BatchOnRound, Pack, PlacePack } from '@sprigline/contract';
import { type BatchIdentity, type Entry, replay } from '@sprigline/domain';
import { expect, test } from 'vitest';
import { testApi } from '../../../../test/support/api.ts';
import { newId } from '../../../../test/support/people.ts';
import { Desk, nursery } from '../../../../test/support/nursery.ts';

const api = await testApi();
const place = await nursery(api);
const desk = new Desk(api, place);

test('a phone comes to the same books by itself, corrections and late entries among them', async () => {
  const [first, second] = [await desk.stick(40), await desk.stick(30, { placeId: place.trays[1], bundleId: place.bundles[1] })];
  const miscount = desk.entry('2025-12-01', { kind: 'counted', batchId: first.batchId, alive: 31, look: 'look' });
  await desk.write([miscount, desk.entry('2026-01-10', { kind: 'counted', batchId: first.batchId, alive: 33, look: 'tug', rooted: 4 })], { confirm: [miscount.id] });
  await desk.write([desk.entry('2025-12-01', { kind: 'replaced', entryId: miscount.id, sawVersion: miscount.id, reason: 'misread', instead: { observedOn: '2025-12-01', saying: { kind: 'counted', batchId: first.batchId, alive: 35, look: 'look' } } })]);
  await desk.write([desk.entry('2025-11-01', { kind: 'died', batchId: second.batchId, n: 3, cause: 'black base' })], { door: 'outbox' });

  const { body } = (await desk.get(`places/${place.house}/pack`)) as { body: PlacePack };
  const batches: BatchOnRound[] = body.round.stops.flatMap((stop) => stop.batches);
  expect(batches.map(({ balance, rootedNow }) => [balance, rootedNow])).toEqual([[33, 4], [27, null]]);
  for (const { batch, entries } of body.books) {
    const books = replay(batch as BatchIdentity, entries as unknown as Entry[]);
    const known = batches.find(({ id }) => id === batch.id);
    expect([books.balance, books.rooted.now ?? null]).toEqual([known?.balance, known?.rootedNow]);
  }
  expect(JSON.stringify(body.books)).not.toContain('writtenBy');
});

test('a printed list is taken along in printed order, without what has no plants any more', async () => {
  const asked = { placeId: place.bench, days: 0 };
  const list = { id: newId(), kind: 'rootCheck', asked };
  const { status } = await desk.post('work-lists', list);
  expect(status).toBe(201);
  const printed = (await desk.get(`work-lists/${list.id}`)).body.lines.map(({ batch }: { batch: { id: string } }) => batch.id);
  const { body } = (await desk.get(`work-lists/${list.id}/pack`)) as { body: PlacePack };
  expect(printed.length).toBeGreaterThan(0);
  expect(body.round).toMatchObject({ place: { id: list.id, name: 'rootCheck' }, taps: [] });
  expect(body.round.stops.flatMap(({ batches }) => batches.map(({ id }) => id))).toEqual(printed);
  expect(body.books.map(({ batch }) => batch.id)).toEqual(printed);
  expect((await desk.get(`work-lists/${newId()}/pack`)).status).toBe(404);
});

test('what is taken along everywhere: people, places in walking order, days of work near by; for members only', async () => {
  const { body } = (await desk.get('pack')) as { body: Pack };
  expect(body.me).toMatchObject({ personId: place.coordinator.personId, role: 'coordinator' });
  expect(body.people.map(({ id }) => id)).toEqual(expect.arrayContaining([place.volunteer.personId]));
  expect(body.places.map(({ name }) => name)).toEqual(['House 1', 'Bench A', 'T1', 'T2', 'T3', 'Lowmire Wood', 'P1']);
  expect(body.recipes).toEqual([{ versionId: place.recipeVersionId, name: 'Heel, talc', version: 1, medium: null }]);
  expect(body.programme).toMatchObject({ handle: 'harrowdale' });
});

test('bundles are taken along until they are wholly stuck, the newest trip first', async () => {
  const stand = { standId: place.standId, people: null, ledBy: null, permissionId: null, note: null };
  const bundle = (donorTreeId: string, cuttings: number) => ({ id: newId(), donorTreeId, cuttings, heightM: null, shoot: null, foliage: null, base: null, lengthCm: null });
  const today = new Date().toISOString().slice(0, 10);
  const [begun, whole, untouched] = [bundle(place.donors[0], 30), bundle(place.donors[1], 12), bundle(place.donors[1], 20)];
  const trip = await desk.post('trips', { id: newId(), wentOn: today, ...stand, bundles: [begun, whole, untouched] });
  expect(trip.status).toBe(201);
  await desk.write([desk.entry(today, { kind: 'stuck', batchId: newId(), stickingId: newId(), n: 18, placeId: place.trays[2], bundleId: begun.id }),
    desk.entry(today, { kind: 'stuck', batchId: newId(), stickingId: newId(), n: 12, placeId: place.trays[2], bundleId: whole.id })]);

  const { body } = (await desk.get('pack')) as { body: Pack };
  expect(body.bundles).toEqual([
    { id: begun.id, tripDay: today, donorTree: 'CR-1', taxon: 'Juniperus communis', stand: 'Corran Ridge', cuttings: 30, stuck: 18 },
    { id: untouched.id, tripDay: today, donorTree: 'CR-2', taxon: 'Juniperus communis', stand: 'Corran Ridge', cuttings: 20, stuck: 0 },
  ]);
});

test('what labels lead to is taken along: batches with their walk, donor trees and open places with the pack', async () => {
  const { batchId } = await desk.stick(12, { label: 'FIRST-1', placeId: place.trays[2] });
  for (const given of [{ code: 'LATER-1', batchId }, { code: 'TREE-1', donorTreeId: place.donors[0] }, { code: 'BENCH-1', placeId: place.bench }]) expect((await desk.post('labels', given)).status).toBe(200);
  const { body: pack } = (await desk.get('pack')) as { body: Pack };
  expect(pack.labels).toEqual([{ code: 'BENCH-1', is: 'place', id: place.bench }, { code: 'TREE-1', is: 'donorTree', id: place.donors[0] }]);
  const { body: walk } = (await desk.get(`places/${place.bench}/pack`)) as { body: PlacePack };
  expect(walk.labels.filter((label) => label.batchId === batchId).map(({ code }) => code)).toEqual(['FIRST-1', 'LATER-1']);
});

test('of a mixed batch, too, a phone comes to the same books, also when some of it go on from there', async () => {
  const [one, other, mixture, potted] = [await desk.stick(20, { placeId: place.trays[2] }), await desk.stick(15, { placeId: place.trays[2], bundleId: place.bundles[1] }), newId(), newId()];
  await desk.write([desk.entry('2026-02-01', { kind: 'mixed', toBatchId: mixture, placeId: place.trays[2], parts: [{ batchId: one.batchId, n: 6 }, { batchId: other.batchId, n: 4 }] })]);
  const told = await desk.write([desk.entry('2026-03-01', { kind: 'potted', batchId: mixture, n: 3, toBatchId: potted, placeId: place.bench, label: 'MIXED-P' })], { door: 'outbox' });
  expect(told).toMatchObject([{ status: 'written', flags: [] }]);
  const { body } = (await desk.get(`places/${place.house}/pack`)) as { body: PlacePack };
  const balances = new Map(body.round.stops.flatMap((stop) => stop.batches.map((batch) => [batch.id, batch.balance])));
  for (const [id, n] of [[mixture, 7], [potted, 3], [one.batchId, 14], [other.batchId, 11]] as const) {
    const books = body.books.find(({ batch }) => batch.id === id);
    expect([balances.get(id), books && replay(books.batch as BatchIdentity, books.entries as unknown as Entry[]).balance]).toEqual([n, n]);
  }
});

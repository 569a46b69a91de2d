import { expect, test } from 'vitest';
import { testApi } from '../../../../test/support/api.ts';
import { Asker, Build } from '../../../../test/support/build.ts';
import { member, newId, signedIn } from '../../../../test/support/people.ts';

const api = await testApi();
const desk = new Asker(api, await signedIn(api, 'coordinator'));
const walker = await member(api, 'volunteer');
const volunteer = new Asker(api, walker.headers);
const build = new Build(desk);

const codes = (body: { warnings: { code: string }[] }): string[] => body.warnings.map(({ code }) => code);

test('a volunteer logs a trip with its bundles and a note, once however often it is sent', async () => {
  const tree = await build.donorTree();
  const trip = { id: newId(), wentOn: '2025-10-01', standId: tree.standId, ledBy: walker.personId, people: 4, note: 'left at the gate', bundles: [build.bundle(tree.id, 30)] };
  const made = await volunteer.post('trips', trip);

  expect(made).toMatchObject({ status: 201, body: { wentOn: '2025-10-01', people: 4, bundles: [{ cuttings: 30, heightM: 1.5, lengthCm: 12.5, base: 'heel' }] } });
  expect(JSON.stringify(made.body)).not.toContain('gate');
  expect(await volunteer.post('trips', trip)).toMatchObject({ status: 201, body: made.body });
  expect((await volunteer.post('trips', { ...trip, people: 5 })).body.type).toBe('/problems/record/id-reused');
  expect((await desk.get(`trips?standId=${tree.standId}`)).body).toMatchObject([{ id: trip.id, donorTrees: 1, cuttings: 30 }]);
});

test('a trip note is read with the grant only', async () => {
  const trip = await build.trip({ note: 'over the stile' });

  expect((await volunteer.get(`trips/${trip.id}/note`)).status).toBe(403);
  const { body, etag } = await desk.get(`trips/${trip.id}/note`);
  expect(body).toEqual({ note: 'over the stile' });
  expect((await desk.put(`trips/${trip.id}/note`, { note: 'round the wall' })).status).toBe(428);
  expect(await desk.put(`trips/${trip.id}/note`, { note: 'round the wall' }, etag)).toMatchObject({ status: 200, body: { note: 'round the wall' } });
});

test('trips use up a permission, and going over its quota is warned of, not refused', async () => {
  const tree = await build.donorTree();
  const permission = await build.permission({ standId: tree.standId, quota: 200 });
  await build.trip({ standId: tree.standId, permissionId: permission.id, bundles: [build.bundle(tree.id, 180)] });
  expect((await desk.get(`permissions/${permission.id}`)).body).toMatchObject({ used: 180, quota: 200 });

  const over = await volunteer.post('trips', { id: newId(), wentOn: '2025-10-01', standId: tree.standId, permissionId: permission.id, bundles: [build.bundle(tree.id, 21)] });
  expect(over.body.warnings).toEqual([{ code: 'permission-overused' }]);
  expect((await desk.get(`trips/${over.body.id}`)).body.warnings).toEqual([{ code: 'permission-overused', used: 201, quota: 200 }]);
});

test('a trip without a named permission takes the one that covers stand and day, if just one does', async () => {
  const tree = await build.donorTree();
  const permission = await build.permission({ standId: tree.standId, validFrom: '2025-09-01', validUntil: '2025-12-31' });
  const go = (wentOn: string, more = {}) => volunteer.post('trips', { id: newId(), wentOn, standId: tree.standId, ...more });

  expect((await go('2025-10-01')).body).toMatchObject({ permissionId: permission.id, warnings: [] });
  expect((await go('2026-01-01')).body).toMatchObject({ permissionId: null, warnings: [{ code: 'no-permission' }] });
  expect(codes((await go('2026-01-01', { permissionId: permission.id })).body)).toEqual(['permission-not-valid']);
  expect((await go('2025-10-01', { permissionId: null })).body.permissionId).toBeNull();
});

test('a permission for another stand or taxon is warned of', async () => {
  const [tree, other] = [await build.donorTree(), await build.donorTree()];
  const permission = await build.permission({ taxonIds: [other.taxonId] });
  const trip = await build.trip({ standId: tree.standId, permissionId: permission.id, bundles: [build.bundle(tree.id)] });

  expect(codes(trip)).toEqual(['permission-for-other-trees']);
});

test('a donor tree cut under two years ago is warned of', async () => {
  const tree = await build.donorTree();
  const cut = (wentOn: string) => build.trip({ standId: tree.standId, wentOn, bundles: [build.bundle(tree.id)] });
  await cut('2023-10-01');

  expect((await cut('2025-10-01')).warnings.filter(({ code }) => code === 'cut-recently')).toEqual([]);
  expect((await cut('2025-10-02')).warnings).toContainEqual({ code: 'cut-recently', donorTreeId: tree.id, cutOn: '2025-10-01' });
});

test('bundles are added by volunteers, and mended at the desk against the version of the trip', async () => {
  const tree = await build.donorTree();
  const trip = await build.trip({ standId: tree.standId });
  const bundle = build.bundle(tree.id, 12);
  const added = await volunteer.post(`trips/${trip.id}/bundles`, bundle);
  expect(added.body.bundles).toMatchObject([{ id: bundle.id, cuttings: 12 }]);
  expect((await volunteer.post(`trips/${trip.id}/bundles`, bundle)).body.bundles).toHaveLength(1);

  const { id: _, ...content } = bundle;
  const path = `trips/${trip.id}/bundles/${bundle.id}`;
  expect((await volunteer.put(path, content, added.etag)).status).toBe(403);
  expect((await desk.put(path, { ...content, cuttings: 13 }, '"old"')).status).toBe(412);
  const { etag } = await desk.get(`trips/${trip.id}`);
  expect((await desk.put(path, { ...content, cuttings: 13 }, etag)).body.bundles).toMatchObject([{ cuttings: 13 }]);
  expect((await desk.post(`trips/${trip.id}/bundles`, build.bundle(newId()))).body.type).toBe('/problems/record/no-such-donor-tree');
});

test('permissions are for the grant and the desk', async () => {
  const permission = await build.permission();
  const { id: _, used: __, givenBack: ___, ...content } = permission;

  expect((await volunteer.get('permissions')).body.type).toBe('/problems/place/grant-needed');
  expect((await volunteer.post('permissions', { ...content, id: newId() })).status).toBe(403);
  expect((await desk.get('permissions?limit=1')).body).toHaveLength(1);
  const { etag } = await desk.get(`permissions/${permission.id}`);
  expect((await desk.put(`permissions/${permission.id}`, { ...content, quota: 50 }, etag)).body.quota).toBe(50);
  expect((await desk.post('permissions', { ...content, id: newId(), validUntil: '2024-01-01' })).body.errors[0].pointer).toBe('#/validUntil');
});

test('trips are listed newest first, in parts', async () => {
  const stand = await build.stand();
  for (const wentOn of ['2025-01-02', '2025-03-01', '2025-02-01', '2025-03-01']) await build.trip({ standId: stand.id, wentOn });

  const first = await desk.get(`trips?standId=${stand.id}&limit=3`);
  const next = /<([^>]+)>/.exec(String(first.headers['link']))?.[1] ?? '';
  const days = [...first.body, ...(await desk.get(next)).body].map(({ wentOn }: { wentOn: string }) => wentOn);
  expect(days).toEqual(['2025-03-01', '2025-03-01', '2025-02-01', '2025-01-02']);
});

test('a bundle says how many of its cuttings are stuck', async () => {
  const tree = await build.donorTree();
  const trip = await build.trip({ standId: tree.standId, bundles: [build.bundle(tree.id, 30), build.bundle(tree.id, 10)] });
  const first = trip.bundles.find(({ cuttings }) => cuttings === 30);
  const placeId = (await build.tray()).id;
  const stick = (n: number, stickingId: string) => ({ id: newId(), observedOn: '2025-10-02', writtenAt: '2025-10-02T10:00:00Z', saying: { kind: 'stuck', batchId: newId(), stickingId, n, placeId, bundleId: first?.id } });
  const stickingId = newId();
  const written = await desk.post('entries', { entries: [stick(12, stickingId), stick(5, stickingId)] });

  expect(written.body.entries.map(({ status }: { status: string }) => status)).toEqual(['written', 'written']);
  expect((await desk.get(`trips/${trip.id}`)).body.bundles.map(({ cuttings, stuck }: { cuttings: number; stuck: number }) => [cuttings, stuck])).toEqual(expect.arrayContaining([[30, 17], [10, 0]]));
});

test('a permission names several species, and warns of others only', async () => {
  const [tree, other] = [await build.donorTree(), await build.donorTree()];
  const both = await build.permission({ taxonIds: [other.taxonId, tree.taxonId] });
  expect(both.taxonIds).toEqual([other.taxonId, tree.taxonId].sort());
  expect(codes(await build.trip({ standId: tree.standId, permissionId: both.id, bundles: [build.bundle(tree.id)] }))).toEqual([]);

  const { id: _, used: __, givenBack: ___, ...content } = both;
  const { etag } = await desk.get(`permissions/${both.id}`);
  expect((await desk.put(`permissions/${both.id}`, { ...content, taxonIds: [newId()] }, etag)).body.type).toBe('/problems/record/no-such-taxon');
  expect((await desk.put(`permissions/${both.id}`, { ...content, taxonIds: [other.taxonId] }, etag)).body.taxonIds).toEqual([other.taxonId]);
});

test('a permission’s trips can be told from others, and a stand’s trees that were cut lately are named before the cut', async () => {
  const tree = await build.donorTree();
  const permission = await build.permission();
  const under = await build.trip({ standId: tree.standId, permissionId: permission.id, wentOn: '2024-10-01', bundles: [build.bundle(tree.id)] });
  await build.trip({ standId: tree.standId, permissionId: null });

  expect((await desk.get(`trips?permissionId=${permission.id}`)).body.map(({ id }: { id: string }) => id)).toEqual([under.id]);
  expect((await volunteer.get(`trips/last-cuts?standId=${tree.standId}&on=2026-09-30`)).body).toEqual([{ donorTreeId: tree.id, cutOn: '2024-10-01' }]);
  expect((await volunteer.get(`trips/last-cuts?standId=${tree.standId}&on=2026-10-01`)).body).toEqual([]);
});

import { expect, test } from 'vitest';
import { testApi } from '../../../../test/support/api.ts';
import { Asker, Build } from '../../../../test/support/build.ts';
import { nursery, Desk } from '../../../../test/support/nursery.ts';
import { asOwner, newId, signedIn } from '../../../../test/support/people.ts';

const api = await testApi();
const desk = new Asker(api, await signedIn(api, 'coordinator'));
const volunteer = new Asker(api, await signedIn(api, 'volunteer'));
const build = new Build(desk);

test('places come in walking order, parents first, with the plants of each', async () => {
  const stock = await nursery(api, 'walkdale');
  const { api: _, nursery: records, headers } = new Desk(api, stock);
  const ledger = new Desk(api, records, headers);
  await ledger.stick(120, { placeId: records.trays[0] });
  await ledger.stick(30, { placeId: records.trays[2], bundleId: records.bundles[1] });
  const places = (await new Asker(api, headers, 'walkdale').get('places')).body;

  expect(places.map(({ name, depth, plants, plantsWithin }: Record<string, unknown>) => [name, depth, plants, plantsWithin])).toEqual([
    ['House 1', 0, 0, 150],
    ['Bench A', 1, 0, 150],
    ['T1', 2, 120, 120],
    ['T2', 2, 0, 0],
    ['T3', 2, 30, 30],
    ['Lowmire Wood', 0, 0, 0],
    ['P1', 1, 0, 0],
  ]);
  const at = new Asker(api, headers, 'walkdale');
  const { body, etag } = await at.get(`places/${records.bench}`);
  const { id: __, kind: ___, parentId: ____, fillings: _____, ...content } = body;
  expect(await at.put(`places/${records.bench}`, { ...content, closedOn: '2026-05-01' }, etag)).toMatchObject({
    status: 409,
    body: { type: '/problems/place/not-empty', facts: { plants: 150 } },
  });
});

test('the walking order is told by numbers, then by names', async () => {
  const house = await build.place();
  for (const [name, walkOrder] of [['b', 2], ['a', 10], ['c', 2]] as const) await build.place({ kind: 'bench', parentId: house.id, name, walkOrder });

  const inHouse = (await volunteer.get('places')).body.filter(({ parentId }: { parentId: string }) => parentId === house.id);
  expect(inHouse.map(({ name }: { name: string }) => name)).toEqual(['b', 'c', 'a']);
});

test('a tray is filled anew, and keeps what it was filled with before', async () => {
  const tray = await build.tray({ filling: { id: newId(), filledOn: '2025-09-01', medium: 'perlite', howCleaned: null, mediumLot: null, plantsStayed: false } });
  const filling = { id: newId(), filledOn: '2026-02-01', medium: 'perlite and bark', howCleaned: 'steam' };
  await desk.post(`places/${tray.id}/fillings`, filling);
  await desk.post(`places/${tray.id}/fillings`, filling);

  expect((await desk.get(`places/${tray.id}`)).body.fillings.map(({ medium }: { medium: string }) => medium)).toEqual(['perlite and bark', 'perlite']);
  const bench = await build.place({ kind: 'bench' });
  expect((await desk.post(`places/${bench.id}/fillings`, { ...filling, id: newId() })).body.type).toBe('/problems/place/not-a-tray');
  expect((await desk.post('places', { id: newId(), kind: 'bench', name: 'rows', rows: 3 })).body.type).toBe('/problems/place/not-a-tray');
});

test('a tray is carried elsewhere, once however often it is sent, and where it lay is kept', async () => {
  const tray = await build.tray();
  const bench = await build.place({ kind: 'bench' });
  const move = { id: newId(), toPlaceId: bench.id, movedOn: '2026-03-01' };

  expect((await desk.post(`places/${tray.id}/moves`, move)).body).toMatchObject({ parentId: bench.id });
  expect((await desk.post(`places/${tray.id}/moves`, move)).status).toBe(201);
  const { rows } = await asOwner(api, (sql) => sql.query('SELECT from_parent_id, to_parent_id FROM place_move WHERE place_id = $1', [tray.id]));
  expect(rows).toEqual([{ from_parent_id: tray.parentId, to_parent_id: bench.id }]);
});

test('nothing is put into a tray, a site or itself', async () => {
  const [tray, site, house] = [await build.tray(), await build.site(), await build.place()];
  const bench = await build.place({ kind: 'bench', parentId: house.id });
  const move = (id: string, toPlaceId: string) => desk.post(`places/${id}/moves`, { id: newId(), toPlaceId, movedOn: '2026-03-01' });

  expect((await desk.post('places', { id: newId(), kind: 'tray', name: 'in a tray', parentId: tray.id })).body.type).toBe('/problems/place/holds-no-places');
  expect((await move(bench.id, site.id)).body.type).toBe('/problems/place/holds-no-places');
  expect((await move(house.id, bench.id)).body.type).toBe('/problems/place/inside-itself');
  expect((await move(house.id, house.id)).body.type).toBe('/problems/place/inside-itself');
  expect((await move(bench.id, newId())).body.type).toBe('/problems/record/no-such-place');
});

test('two moves at once never make a ring', async () => {
  const [one, other] = [await build.place(), await build.place()];
  const move = (id: string, toPlaceId: string) => desk.post(`places/${id}/moves`, { id: newId(), toPlaceId, movedOn: '2026-03-01' });
  const statuses = (await Promise.all([move(one.id, other.id), move(other.id, one.id)])).map(({ status }) => status).sort();

  expect(statuses).toEqual([201, 422]);
});

test('a closed empty place leaves the tree with all that lies in it', async () => {
  const house = await build.place();
  const bench = await build.place({ kind: 'bench', parentId: house.id });
  const { body, etag } = await desk.get(`places/${house.id}`);
  const { id: _, kind: __, parentId: ___, fillings: ____, ...content } = body;
  expect((await desk.put(`places/${house.id}`, { ...content, closedOn: '2026-05-01' }, etag)).status).toBe(200);

  const ids = (await desk.get('places')).body.map(({ id }: { id: string }) => id);
  expect(ids).not.toContain(house.id);
  expect(ids).not.toContain(bench.id);
});

test('a name is used once where it lies, and volunteers do not make places', async () => {
  const house = await build.place();
  const bench = { kind: 'bench', name: 'Bench A', parentId: house.id } as const;
  await build.place(bench);

  expect((await desk.post('places', { id: newId(), ...bench })).body.type).toBe('/problems/record/name-taken');
  expect((await volunteer.post('places', { id: newId(), ...bench, name: 'B' })).status).toBe(403);
});

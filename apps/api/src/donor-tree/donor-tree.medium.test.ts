import { DonorTree } from '@sprigline/contract';
import { expect, test } from 'vitest';
import { testApi } from '../../../../test/support/api.ts';
import { Asker, Build } from '../../../../test/support/build.ts';
import { asOwner, newId, signedIn } from '../../../../test/support/people.ts';

// Rounded by hand in packages/domain/src/place/generalised-position.test.ts.
const PLACE = { latitude: 40.015678, longitude: -105.279123, uncertaintyM: 5, elevationM: 1834, directions: 'past the third wall' };
const EXACT = /40\.0156|105\.2791|third wall|1834/;

const api = await testApi();
const desk = new Asker(api, await signedIn(api, 'coordinator'));
const volunteer = new Asker(api, await signedIn(api, 'volunteer'));
const trusted = new Asker(api, await signedIn(api, 'volunteer', 'harrowdale', { seesExact: true }));
const build = new Build(desk);

test('a volunteer records where a new donor tree stands, and cannot read it back', async () => {
  const [{ id: standId }, { id: taxonId }] = [await build.stand(), await build.taxon({ sensitivity: 2 })];
  const id = newId();
  const made = await volunteer.post('donor-trees', { id, label: 'CR-1', standId, taxonId, place: PLACE });

  expect(made).toMatchObject({ status: 201, body: { label: 'CR-1', sex: 'unknown', cell: { latitude: 40, longitude: -105.3, degrees: 0.1, halfDiagonalM: 7004 } } });
  expect(await volunteer.get(`donor-trees/${id}/exact-place`)).toMatchObject({ status: 403, body: { type: '/problems/place/grant-needed' } });
  expect(await desk.get(`donor-trees/${id}/exact-place`)).toMatchObject({ status: 200, body: PLACE });
  expect(await trusted.get(`donor-trees/${id}/exact-place`)).toMatchObject({ status: 200, body: PLACE });
});

test('no other route tells the place, not even to those with the grant', async () => {
  const stand = await build.stand({ place: PLACE });
  const tree = await build.donorTree({ standId: stand.id, place: PLACE });
  const paths = ['donor-trees', `donor-trees/${tree.id}`, 'stands', `stands/${stand.id}`, 'taxa', 'places', 'sites'];

  for (const path of paths) expect(JSON.stringify((await desk.get(path)).body)).not.toMatch(EXACT);
  const audit = await asOwner(api, (sql) => sql.query('SELECT facts FROM audit'));
  expect(JSON.stringify(audit.rows)).not.toMatch(EXACT);
});

test('the stricter of the classes of taxon and stand cuts the cell, and class 1 withholds it', async () => {
  const [fine, withheld] = [await build.taxon({ sensitivity: 4 }), await build.taxon({ sensitivity: 1 })];
  const stand = await build.stand({ sensitivity: 3 });

  expect((await build.donorTree({ standId: stand.id, taxonId: fine.id, place: PLACE })).cell).toMatchObject({ latitude: 40.02, degrees: 0.01 });
  expect((await build.donorTree({ standId: stand.id, taxonId: withheld.id, place: PLACE })).cell).toBeNull();
});

test('a stand is as hidden as the most hidden kind of tree in it, even when a volunteer adds that tree', async () => {
  const stand = await build.stand({ sensitivity: 4, place: PLACE });
  expect(stand.cell).toMatchObject({ degrees: 0.001 });

  const taxon = await build.taxon({ sensitivity: 2 });
  await volunteer.post('donor-trees', { id: newId(), label: 'hidden', standId: stand.id, taxonId: taxon.id });

  expect((await desk.get(`stands/${stand.id}`)).body.cell).toMatchObject({ latitude: 40, longitude: -105.3, degrees: 0.1 });
});

test('another class cuts all cells anew from the place as stored', async () => {
  const taxon = await build.taxon({ sensitivity: 2 });
  const tree = await build.donorTree({ taxonId: taxon.id, place: PLACE });
  const { etag } = await desk.get(`taxa/${taxon.id}`);
  await desk.put(`taxa/${taxon.id}`, { scientificName: taxon.scientificName, sensitivity: 4 }, etag);

  expect((await desk.get(`donor-trees/${tree.id}`)).body.cell).toMatchObject({ latitude: 40.016, longitude: -105.279, degrees: 0.001 });
});

test('a place is corrected by naming the version of it that was seen', async () => {
  const tree = await build.donorTree();
  const path = `donor-trees/${tree.id}/exact-place`;
  expect((await desk.get(path)).status).toBe(404);
  const told = await desk.put(path, PLACE);
  expect(told.status).toBe(200);

  const there = { ...PLACE, latitude: 41.2 };
  expect((await desk.put(path, there)).status).toBe(428);
  expect((await desk.put(path, there, '"old"')).status).toBe(412);
  expect(await desk.put(path, there, told.etag)).toMatchObject({ status: 200, body: there });
  expect((await desk.get(`donor-trees/${tree.id}`)).body.cell).toMatchObject({ latitude: 41.2 });
  expect((await trusted.put(path, PLACE, '*')).status).toBe(403);
});

test('without the routes between, the database itself shows no exact place without the grant', async () => {
  const tree = await build.donorTree({ place: PLACE });
  const pg = await import('pg');
  const sql = new pg.default.Client({ connectionString: api.database.app });
  await sql.connect();
  const seen = async (grant: string): Promise<number> => {
    const { rows } = await asOwner(api, (owner) => owner.query(`SELECT id FROM programme WHERE handle = 'harrowdale'`));
    await sql.query(`BEGIN; SELECT set_config('app.programme_id', '${rows[0].id}', true), set_config('app.sees_exact', '${grant}', true)`);
    const found = await sql.query('SELECT 1 FROM exact_place WHERE donor_tree_id = $1', [tree.id]);
    await sql.query('ROLLBACK');
    return found.rows.length;
  };

  expect([await seen(''), await seen('yes')]).toEqual([0, 1]);
  await sql.end();
});

test('donor trees are listed in parts, each once', async () => {
  const stand = await build.stand();
  const taxon = await build.taxon();
  for (const label of ['A-1', 'A-2', 'A-3', 'A-4', 'A-5']) await build.donorTree({ label, standId: stand.id, taxonId: taxon.id });

  const labels: string[] = [];
  let path: string | undefined = `donor-trees?standId=${stand.id}&limit=2`;
  while (path) {
    const part: Awaited<ReturnType<typeof desk.get>> = await desk.get(path);
    labels.push(...DonorTree.array().parse(part.body).map(({ label }) => label));
    path = /<([^>]+)>; rel="next"/.exec(String(part.headers['link'] ?? ''))?.[1];
  }
  expect(labels).toEqual(['A-1', 'A-2', 'A-3', 'A-4', 'A-5']);
  expect((await desk.get('donor-trees?after=nonsense')).status).toBe(400);
});

test('labels sort as people count, and a part of one finds its trees; signs of patterns stand for themselves', async () => {
  const stand = await build.stand();
  for (const label of ['ws-10', 'WS-2', 'WS-100', 'WS-1', 'WS-02', 'W%S', 'XX']) await build.donorTree({ label, standId: stand.id });
  const listed = async (query: string) => {
    const labels: string[] = [];
    for (let path: string | undefined = `donor-trees?standId=${stand.id}${query}&limit=2`; path; ) {
      const part: Awaited<ReturnType<typeof desk.get>> = await desk.get(path);
      labels.push(...(part.body as { label: string }[]).map(({ label }) => label));
      path = /<([^>]+)>; rel="next"/.exec(String(part.headers['link'] ?? ''))?.[1];
    }
    return labels;
  };
  expect(await listed('')).toEqual(['W%S', 'WS-1', 'WS-02', 'WS-2', 'ws-10', 'WS-100', 'XX']);
  expect(await listed('&label=ws-1')).toEqual(['WS-1', 'ws-10', 'WS-100']);
  expect(await listed('&label=%25')).toEqual(['W%S']);
  expect(await listed('&label=_')).toEqual([]);
});

test('what it names must be there, and its elevation is a band', async () => {
  const { id: standId } = await build.stand();
  const { id: taxonId } = await build.taxon();
  const post = (more: object) => desk.post('donor-trees', { id: newId(), label: newId(), standId, taxonId, ...more });

  expect((await post({ standId: newId() })).body.type).toBe('/problems/record/no-such-stand');
  expect((await post({ taxonId: newId() })).body.type).toBe('/problems/record/no-such-taxon');
  expect((await post({ elevationBandM: 1834 })).body.errors[0].pointer).toBe('#/elevationBandM');
  expect((await post({ label: '' })).status).toBe(422);
});

test('a donor tree is edited whole, and its days come back as they were told', async () => {
  const tree = await build.donorTree({ stateSeenOn: '2026-03-29' });
  const { etag } = await desk.get(`donor-trees/${tree.id}`);
  const { id: _, cell: __, cloneGroupId: ___, ...content } = tree;

  expect(await desk.put(`donor-trees/${tree.id}`, { ...content, state: 'dead', estimatedAgeYears: 140 }, etag)).toMatchObject({
    status: 200,
    body: { state: 'dead', stateSeenOn: '2026-03-29', estimatedAgeYears: 140 },
  });
});

test('a tree that was refused for its label is written down under the same id with another one, and what names it after it', async () => {
  const [{ id: standId }, { id: taxonId }] = [await build.stand(), await build.taxon()];
  const [first, second] = [newId(), newId()];
  const tree = (id: string, label: string) => volunteer.post('donor-trees', { id, label, standId, taxonId });
  const trip = await build.trip({ standId });
  const bundle = () => volunteer.post(`trips/${trip.id}/bundles`, { id: second.replace(/^./, (digit) => (digit === 'f' ? 'e' : 'f')), donorTreeId: second, cuttings: 20 });
  expect((await tree(first, 'TWICE-1')).status).toBe(201);
  expect(await tree(second, 'TWICE-1')).toMatchObject({ status: 409, body: { type: '/problems/record/name-taken' } });
  expect((await bundle()).status).toBe(422);
  expect(await tree(second, 'TWICE-2')).toMatchObject({ status: 201, body: { id: second, label: 'TWICE-2' } });
  expect((await bundle()).status).toBe(201);
  expect(await tree(second, 'TWICE-3')).toMatchObject({ status: 422, body: { type: '/problems/record/id-reused' } });
});

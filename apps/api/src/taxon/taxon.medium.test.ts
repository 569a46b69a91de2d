import { expect, test } from 'vitest';
import { testApi } from '../../../../test/support/api.ts';
import { Asker, Build } from '../../../../test/support/build.ts';
import { asOwner, newId, signedIn } from '../../../../test/support/people.ts';

const api = await testApi();
const desk = new Asker(api, await signedIn(api, 'coordinator'));
const volunteer = new Asker(api, await signedIn(api, 'volunteer'));
const build = new Build(desk);

test('a taxon is made, listed and read with its ETag', async () => {
  const id = newId();
  const made = await desk.post('taxa', { id, scientificName: 'Taxus baccata', commonName: 'yew' });

  expect(made).toMatchObject({ status: 201, body: { id, scientificName: 'Taxus baccata', commonName: 'yew', sensitivity: 2 } });
  expect(await volunteer.get(`taxa/${id}`)).toMatchObject({ status: 200, body: made.body, etag: made.etag });
  expect((await volunteer.get('taxa')).body).toContainEqual(made.body);
});

test('the same taxon sent twice is made once, also twenty times at once', async () => {
  const taxon = { id: newId(), scientificName: 'Sorbus aucuparia' };
  const answers = await Promise.all(Array.from({ length: 20 }, () => desk.post('taxa', taxon)));

  expect(new Set(answers.map(({ status }) => status))).toEqual(new Set([201]));
  expect((await desk.get('taxa')).body.filter((one: { scientificName: string }) => one.scientificName === 'Sorbus aucuparia')).toHaveLength(1);
});

test('one id stands for one thing', async () => {
  const { id } = await build.taxon();

  expect(await desk.post('taxa', { id, scientificName: 'Ilex aquifolium' })).toMatchObject({ status: 422, body: { type: '/problems/record/id-reused' } });
  expect(await desk.post('partners', { id, name: 'Any', since: '2025-01-01' })).toMatchObject({ status: 422, body: { type: '/problems/record/id-reused' } });
});

test('a name is used once', async () => {
  const { scientificName } = await build.taxon();

  expect(await desk.post('taxa', { id: newId(), scientificName })).toMatchObject({ status: 409, body: { type: '/problems/record/name-taken' } });
});

test('an edit names the version that it saw', async () => {
  const { id } = await build.taxon();
  const { etag } = await desk.get(`taxa/${id}`);
  const content = { scientificName: 'Betula pubescens', sensitivity: 0 };

  expect((await desk.put(`taxa/${id}`, content)).status).toBe(428);
  const changed = await desk.put(`taxa/${id}`, content, etag);
  expect(changed).toMatchObject({ status: 200, body: content });
  expect(await desk.put(`taxa/${id}`, content, etag)).toMatchObject({ status: 412, body: { type: '/problems/http/version-stale' } });
  expect((await desk.put(`taxa/${id}`, content, changed.etag)).status).toBe(200);
});

test('of many edits at once on one version, one is made', async () => {
  const { id } = await build.taxon();
  const { etag } = await desk.get(`taxa/${id}`);
  const edits = Array.from({ length: 8 }, (_, n) => desk.put(`taxa/${id}`, { scientificName: `Prunus padus ${n}` }, etag));
  const statuses = (await Promise.all(edits)).map(({ status }) => status).sort();

  expect(statuses).toEqual([200, ...Array<number>(7).fill(412)]);
});

test('a making and a change stand in the audit trail, with who did it and what was there before', async () => {
  const { id } = await build.taxon({ commonName: 'juniper' });
  const { etag } = await desk.get(`taxa/${id}`);
  await desk.put(`taxa/${id}`, { scientificName: 'Juniperus communis nana', commonName: null }, etag);

  const trail = await asOwner(api, (sql) => sql.query('SELECT act, facts, delivered_by FROM audit WHERE subject_id = $1 ORDER BY at, act DESC', [id]));
  expect(trail.rows).toMatchObject([
    { act: 'taxon.made', delivered_by: expect.stringMatching(/^session /) },
    { act: 'taxon.changed', facts: { before: { commonName: 'juniper' } } },
  ]);
});

test('volunteers look, and do not edit', async () => {
  const { id } = await build.taxon();

  expect((await volunteer.post('taxa', { id: newId(), scientificName: 'Any' })).status).toBe(403);
  expect((await volunteer.put(`taxa/${id}`, { scientificName: 'Any' }, '*')).status).toBe(403);
});

test('a body that does not fit is answered with pointers', async () => {
  const { status, body } = await desk.post('taxa', { id: 'x', scientificName: ' ', sensitivity: 9, color: 'red' });

  expect(status).toBe(422);
  expect(body.errors.map(({ pointer }: { pointer: string }) => pointer)).toEqual(expect.arrayContaining(['#/id', '#/scientificName', '#/sensitivity']));
});

test('another programme sees nothing of it', async () => {
  const { id } = await build.taxon();
  const elsewhere = new Asker(api, await signedIn(api, 'coordinator', 'skelldale'), 'skelldale');

  expect((await elsewhere.get(`taxa/${id}`)).status).toBe(404);
  expect((await elsewhere.get('taxa')).body).toEqual([]);
});

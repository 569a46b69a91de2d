import { expect, test } from 'vitest';
import { testApi } from '../../../../test/support/api.ts';
import { Asker, Build } from '../../../../test/support/build.ts';
import { newId, signedIn } from '../../../../test/support/people.ts';

const api = await testApi();
const desk = new Asker(api, await signedIn(api, 'coordinator'));
const volunteer = new Asker(api, await signedIn(api, 'volunteer'));
const build = new Build(desk);
const [stand, taxon] = [await build.stand(), await build.taxon()];
const tree = (label: string, more = {}) => build.donorTree({ label, standId: stand.id, taxonId: taxon.id, ...more });
const [a, b, c, d] = [await tree('A'), await tree('B'), await tree('C'), await tree('D')];

const state = (of: { id: string }, otherTreeId: string, isSame: boolean, saidOn: string, more = {}) =>
  desk.post(`donor-trees/${of.id}/clone-statements`, { id: newId(), otherTreeId, isSame, saidOn, evidence: 'one root, two stems', ...more });
const labels = async (of: { id: string }) => (await desk.get(`donor-trees/${of.id}/clone`)).body.trees.map(({ label }: { label: string }) => label);

test('trees tied by statements are one clone, and a statement taken back parts them again', async () => {
  const { body } = await state(b, a.id, true, '2026-05-01');
  expect(body).toMatchObject({ trees: [{ label: 'A' }, { label: 'B' }], said: [{ isSame: true, holds: true, evidence: 'one root, two stems' }], stand: { trees: 4, clones: 3, assumedDistinct: 2 } });

  await state(b, c.id, true, '2026-05-02');
  expect(await labels(a)).toEqual(['A', 'B', 'C']);

  const parted = await state(a, b.id, false, '2026-06-01', { evidence: 'a test of both' });
  expect(parted.body).toMatchObject({ trees: [], stand: { trees: 4, clones: 3, assumedDistinct: 2 } });
  expect(parted.body.said).toMatchObject([{ isSame: false, holds: true }, { isSame: true, holds: false }]);
  expect(await labels(b)).toEqual(['B', 'C']);
});

test('a statement of an earlier day than the one that holds changes nothing', async () => {
  await state(a, b.id, true, '2026-04-01');
  expect(await labels(a)).toEqual([]);
});

test('what is no pair, or of two species, is refused; sent twice it is written once', async () => {
  const other = await tree('Y', { taxonId: (await build.taxon()).id });
  expect((await state(a, a.id, true, '2026-05-01')).body.type).toBe('/problems/clone/of-itself');
  expect((await state(a, other.id, true, '2026-05-01')).body.type).toBe('/problems/clone/other-species');
  expect((await state(a, newId(), true, '2026-05-01')).body.type).toBe('/problems/record/no-such-donor-tree');

  const id = newId();
  await state(d, c.id, true, '2026-05-01', { id });
  expect((await state(d, c.id, true, '2026-05-01', { id })).body.said.filter((said: { id: string }) => said.id === id)).toHaveLength(1);
  expect((await state(d, c.id, false, '2026-05-01', { id })).body.type).toBe('/problems/record/id-reused');
});

test('a change of the tree’s own record leaves its group alone', async () => {
  const { etag, body } = await desk.get(`donor-trees/${c.id}`);
  const { id: _, cell: __, cloneGroupId, ...content } = body;
  expect(cloneGroupId).not.toBeNull();
  const changed = await desk.put(`donor-trees/${c.id}`, { ...content, note: 'two stems' }, etag);
  expect(changed.body).toMatchObject({ note: 'two stems', cloneGroupId });
});

test('a tree is as it was seen last, by the day and not by when it was written', async () => {
  const see = (seenOn: string, state: string) => volunteer.post(`donor-trees/${d.id}/sightings`, { id: newId(), seenOn, state });
  await see('2026-08-01', 'dead');
  const { body } = await see('2026-03-01', 'standing');

  expect(body.map(({ state }: { state: string }) => state)).toEqual(['dead', 'standing']);
  expect((await desk.get(`donor-trees/${d.id}`)).body).toMatchObject({ state: 'dead', stateSeenOn: '2026-08-01' });
  expect((await volunteer.post(`donor-trees/${newId()}/sightings`, { id: newId(), seenOn: '2026-08-01', state: 'dead' })).status).toBe(404);
  expect((await see('2026-08-02', 'gone')).status).toBe(422);
});

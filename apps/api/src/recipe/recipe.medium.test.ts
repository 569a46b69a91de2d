import { expect, test } from 'vitest';
import { testApi } from '../../../../test/support/api.ts';
import { Asker, Build } from '../../../../test/support/build.ts';
import { newId, signedIn } from '../../../../test/support/people.ts';

const api = await testApi();
const desk = new Asker(api, await signedIn(api, 'coordinator'));
const volunteer = new Asker(api, await signedIn(api, 'volunteer'));
const build = new Build(desk);

const version = (more = {}) => ({ id: newId(), hormone: 'IBA', hormonePpm: 3000, hormoneForm: 'quickDip', madeOn: '2026-01-05', ...more });
const numbers = (body: { versions: { version: number }[] }): number[] => body.versions.map((one) => one.version);

test('another way of doing it is another version, and the first stays as it was', async () => {
  const recipe = await build.recipe();
  const second = version();
  await desk.post(`recipes/${recipe.id}/versions`, second);
  const { body } = await desk.post(`recipes/${recipe.id}/versions`, second);

  expect(numbers(body)).toEqual([2, 1]);
  expect(body.versions[0]).toMatchObject({ ...second, version: 2 });
  expect(body.versions[1]).toEqual(recipe.versions[0]);
  expect((await desk.post(`recipes/${recipe.id}/versions`, { ...second, hormonePpm: 1 })).body.type).toBe('/problems/record/id-reused');
});

test('versions made at once are numbered one after the other', async () => {
  const recipe = await build.recipe();
  const answers = await Promise.all(Array.from({ length: 6 }, () => desk.post(`recipes/${recipe.id}/versions`, version())));

  expect(answers.map(({ status }) => status)).toEqual(Array<number>(6).fill(201));
  expect(numbers((await desk.get(`recipes/${recipe.id}`)).body)).toEqual([7, 6, 5, 4, 3, 2, 1]);
});

test('only the name of a recipe is changed, at the desk, against the version that was seen', async () => {
  const recipe = await build.recipe();
  const { etag } = await volunteer.get(`recipes/${recipe.id}`);

  expect((await volunteer.put(`recipes/${recipe.id}`, { name: 'Soak' }, etag)).status).toBe(403);
  expect((await desk.put(`recipes/${recipe.id}`, { name: 'Soak', hormone: 'none' }, etag)).status).toBe(422);
  expect((await desk.put(`recipes/${recipe.id}`, { name: 'Soak' }, etag)).body).toMatchObject({ name: 'Soak', versions: recipe.versions });
  expect((await desk.put(`recipes/${recipe.id}`, { name: 'Dip' }, etag)).status).toBe(412);
  expect((await desk.post(`recipes/${newId()}/versions`, version())).status).toBe(404);
});

import { describe, expect, test } from 'vitest';
import { RootingCurves } from '@sprigline/contract';
import { testApi } from '../../../../test/support/api.ts';
import { Desk, nursery } from '../../../../test/support/nursery.ts';
import { asOwner, member, newId } from '../../../../test/support/people.ts';

const api = await testApi();
const place = await nursery(api);
const desk = new Desk(api, place);
const recipeVersionId = newId();
await asOwner(api, (sql) => sql.query(`INSERT INTO recipe_version (programme_id, id, recipe_id, version, made_on, hormone, hormone_ppm, hormone_form, medium)
  SELECT programme_id, $1, recipe_id, 2, made_on, 'IBA', 8000, 'talc', 'Sand' FROM recipe_version WHERE id = $2`, [recipeVersionId, place.recipeVersionId]));

// Twenty cuttings of each tree, stuck on 2025-10-02. Tug in week 10: the first has 8 with roots, the second 2. In week 20 the first has
// 12, two are dead since; the second has 10. Then all that is left is called.
const [first, second] = [await desk.stick(20, { recipeVersionId }), await desk.stick(20, { recipeVersionId, bundleId: place.bundles[1], placeId: place.trays[1] })];
const tug = (day: string, batchId: string, alive: number, rooted: number) => desk.entry(day, { kind: 'counted', batchId, alive, look: 'tug', rooted });
await desk.write([
  tug('2025-12-11', first.batchId, 20, 8), tug('2025-12-11', second.batchId, 20, 2),
  tug('2026-02-19', first.batchId, 18, 12), tug('2026-02-19', second.batchId, 20, 10),
  ...[first, second].map(({ batchId }) => desk.entry('2026-02-19', { kind: 'lifted', batchId, toBatchId: newId(), n: 10, placeId: place.bench })),
  desk.entry('2026-02-20', { kind: 'called', batchId: first.batchId, n: 6 }), desk.entry('2026-02-20', { kind: 'called', batchId: second.batchId, n: 10 }),
]);

const read = async (query: string): Promise<RootingCurves> => {
  const { status, body } = await desk.get(`readings/time-to-root?${query}`);
  expect(status, JSON.stringify(body)).toBe(200);
  return RootingCurves.parse(body);
};

describe('how long cuttings take to root', () => {
  test('worked by hand: 10 of 40 by week 10, 22 by week 20, half of those that root a twelfth of the way after week 10', async () => {
    const { groups: [curve], inAll, difference } = await read('by=taxon');
    expect(inAll).toBe(1);
    expect(difference).toEqual({ kind: 'not-told', because: 'one-group' });
    expect(curve).toMatchObject({
      cuttings: 40, stickings: 2, donors: 2, rooted: 22, lost: 2, called: 16, waiting: 0, undecidedShare: 0, cameLate: 0,
      method: 'intervals', limitsBy: 'cuttings', firstRootsAfterDays: 70, taxonId: place.taxonId, standId: place.standId,
    });
    expect(curve?.steps.map(({ since, week, rooted }) => [since, week, rooted])).toEqual([[0, 10, expect.closeTo(0.25, 4)], [10, 20, expect.closeTo(0.55, 4)]]);
    expect(curve?.halfOfRooting?.week).toBeCloseTo(10 + 10 / 12, 3);
    expect(curve?.watched[0]).toEqual({ week: 0, cuttings: 40 });
  });

  test('groups are compared within their trees, and where no tree is in two of them it says so', async () => {
    const { groups, difference } = await read('by=donor');
    expect(groups.map(({ name, rooted }) => [name, rooted])).toEqual([['CR-1', 12], ['CR-2', 10]]);
    expect(difference).toEqual({ kind: 'not-told', because: 'no-tree-in-two-groups' });
  });

  test.each([['hormone', 'iba 8000 talc', 'IBA 8000 ppm'], ['medium', 'sand', 'Sand'], ['wound', 'none', ''], ['place', place.bench, 'House 1 › Bench A']])('told apart by %s', async (by, key, name) => {
    const { groups } = await read(`by=${by}`);
    expect(groups.map((one) => [one.key, one.name, one.cuttings])).toEqual([[key, name, 40]]);
  });

  test('a filter chooses, and nothing chosen is no curve', async () => {
    expect((await read(`donorTreeId=${place.donors[1]}`)).groups.map(({ cuttings }) => cuttings)).toEqual([20]);
    expect(await read('season=1999')).toMatchObject({ groups: [], inAll: 0 });
    expect((await desk.get('readings/time-to-root?by=team')).status).toBe(422);
  });

  test('the table has a line for each step', async () => {
    const answer = await api.app.inject({ url: '/api/v1/programmes/harrowdale/readings/time-to-root.csv?by=taxon', headers: desk.headers });
    expect(answer.headers['content-type']).toContain('text/csv');
    expect(answer.body.trimEnd().split('\r\n')).toHaveLength(3);
  });

  test('a partner may not ask', async () => {
    const partner = await member(api, 'partner');
    expect((await api.app.inject({ url: '/api/v1/programmes/harrowdale/readings/time-to-root', headers: partner.headers })).statusCode).toBe(403);
  });
});

import { describe, expect, test } from 'vitest';
import { Comparison, TrialLayout } from '@sprigline/contract';
import { testApi } from '../../../../test/support/api.ts';
import { Desk, nursery } from '../../../../test/support/nursery.ts';
import { asOwner, member, newId } from '../../../../test/support/people.ts';

const api = await testApi();
const place = await nursery(api);
const desk = new Desk(api, place);

/** Cuttings of a tree stuck into a tray; some root and are lifted, the rest is called unless it waits. */
async function stuck(n: number, rooted: number, more: Record<string, unknown> = {}, { on = '2025-10-02', waiting = 0 } = {}): Promise<void> {
  const { batchId } = await desk.stick(n, more, on);
  const lifted = rooted > 0 ? [desk.entry('2026-04-10', { kind: 'lifted', batchId, toBatchId: newId(), n: rooted, placeId: place.bench })] : [];
  const called = n - rooted - waiting > 0 ? [desk.entry('2026-04-11', { kind: 'called', batchId, n: n - rooted - waiting })] : [];
  for (const item of await desk.write([...lifted, ...called])) expect(item.status).toBe('written');
}

const recipe = (name: string, part: Record<string, unknown> = {}): Promise<string> => asOwner(api, async (sql) => {
  const [id, version] = [newId(), newId()];
  await sql.query('INSERT INTO recipe (programme_id, id, name) VALUES ($1, $2, $3)', [place.programmeId, id, name]);
  await sql.query(
    'INSERT INTO recipe_version (programme_id, id, recipe_id, version, made_on, hormone, hormone_ppm, hormone_form, medium) VALUES ($1, $2, $3, 1, $4, $5, $6, $7, $8)',
    [place.programmeId, version, id, '2025-09-01', part['hormone'] ?? null, part['ppm'] ?? null, part['form'] ?? null, part['medium'] ?? 'sand'],
  );
  return version;
});

const [long, short] = [await recipe('long', { hormone: 'IBA', ppm: 3000, form: 'talc' }), await recipe('short')];
const { bundles: [, other], trays: [first, second] } = place;
// Plum root cuttings (Hoblyn & Palmer 1934, in Bartlett 1935; from memory), as though the two times of planting were two trees.
await stuck(240, 156, { recipeVersionId: long, placeId: first, rows: '1' });
await stuck(240, 107, { recipeVersionId: short, placeId: first, rows: '2' });
await stuck(240, 84, { recipeVersionId: long, placeId: second, bundleId: other, rows: '1' });
await stuck(240, 31, { recipeVersionId: short, placeId: second, bundleId: other, rows: '2' });

const read = async (query: string): Promise<Comparison> => {
  const { status, body } = await desk.get(`readings/comparison${query}`);
  expect(status, JSON.stringify(body)).toBe(200);
  return Comparison.parse(body);
};

describe('two recipes on two trees', () => {
  test('are told with their numbers and both ranges', async () => {
    const { groups, against, by } = await read('');
    expect({ by, against: groups.find(({ key }) => key === against)?.name }).toEqual({ by: 'recipe', against: groups[0]?.name });
    expect(groups.map(({ name, cuttings, rooted, lost, undecided, donors, trays, days, share }) => [name, cuttings, rooted, lost, undecided, donors, trays, days, share]).sort()).toEqual([
      ['long', 480, 240, 240, 0, 2, 2, 1, 0.5], ['short', 480, 138, 342, 0, 2, 2, 1, 138 / 480],
    ]);
    expect(groups.find(({ name }) => name === 'long')).toMatchObject({
      byDonor: { kind: 'best-and-worst', best: { label: 'CR-1', successes: 156, plants: 240 } }, wilson: { lower: expect.closeTo(0.4554, 4), upper: expect.closeTo(0.5446, 4) },
    });
  });

  test('are compared tree by tree: the odds by hand, and 49 and 53 of 240 more', async () => {
    const { groups } = await read('');
    const key = (name: string) => encodeURIComponent(groups.find((group) => group.name === name)?.key ?? '');
    const { pairs: [pair] } = await read(`?against=${key('short')}`);
    expect(pair).toMatchObject({ state: 'compared', mixedUpWith: [], unknown: [], found: { by: 'within-trees', donors: 2, isTold: true, limitsBy: 'plants' } });
    expect(pair?.found?.odds?.ratio).toBeCloseTo((156 * 133 + 84 * 209) / (84 * 107 + 156 * 31), 10);
    expect(pair?.found?.difference).toBeCloseTo((49 + 53) / 480, 12);
    // chi-square (51 - 1/2)^2 over a quarter of (263 x 217 + 115 x 365) / 479, so 49.33.
    expect(pair?.found?.chance).toBeCloseTo(2.16e-12, 13);
    const { pairs: [turned] } = await read(`?against=${key('long')}`);
    expect(turned?.found?.difference).toBeCloseTo(-102 / 480, 12);
  });

  test('can be told by their hormone alone, since nothing else differs', async () => {
    const { groups, pairs } = await read('?by=hormone');
    expect(groups.map(({ key, name, hormone }) => [key, name, hormone]).sort()).toEqual([['iba 3000 talc', 'IBA 3000 ppm', { name: 'IBA', ppm: 3000, form: 'talc' }], ['none', '', null]]);
    expect(pairs[0]).toMatchObject({ state: 'compared', found: { by: 'within-trees' } });
    // One medium is nothing to compare.
    expect((await read('?by=medium')).pairs).toEqual([]);
  });
});

test('a recipe given to one tree alone is said to be mixed up with it, and nobody is given a figure', async () => {
  const [a, b] = [await recipe('moss', { medium: 'moss' }), await recipe('bark', { medium: 'bark' })];
  await stuck(20, 15, { recipeVersionId: a, placeId: first }, { on: '2024-10-05' });
  await stuck(20, 5, { recipeVersionId: b, placeId: place.trays[2], bundleId: other }, { on: '2024-10-12' });
  const { groups, pairs, against } = await read('?by=medium&season=2024');
  expect(groups.map(({ name, rooted }) => [name, rooted]).sort()).toEqual([['bark', 5], ['moss', 15]]);
  expect(pairs).toEqual([expect.objectContaining({ second: against, state: 'mixed-up', mixedUpWith: ['donor', 'tray', 'day'], advice: ['each-donor-in-both', 'several-trays-each', 'both-on-each-day'], found: null })]);
});

test('while half still wait nothing is told apart, but the day of the verdict is', async () => {
  const [a, b] = [await recipe('early'), await recipe('late')];
  await stuck(20, 4, { recipeVersionId: a, placeId: first }, { on: '2023-10-05', waiting: 12 });
  await stuck(20, 8, { recipeVersionId: b, placeId: first }, { on: '2023-10-05' });
  const { groups, pairs } = await read('?season=2023');
  expect(pairs).toEqual([expect.objectContaining({ state: 'too-early', found: null })]);
  expect(groups.find(({ name }) => name === 'early')).toMatchObject({ rooted: 4, lost: 4, undecided: 12, isRankable: false, range: { lower: 0.2, upper: 0.8 }, verdictOn: expect.any(String) });
  expect(groups.find(({ name }) => name === 'late')).toMatchObject({ verdictOn: null });
});

test('what is allowed for is no part of the difference', async () => {
  const { pairs: [pair] } = await read('?allowFor=season&season=2025');
  expect(pair).toMatchObject({ state: 'compared', found: { by: 'allowing-for', limitsBy: 'donors' } });
});

test('cuttings without a recipe are a group that is shown last, and never compared', async () => {
  await desk.stick(5, { recipeVersionId: undefined, placeId: place.trays[2] }, '2022-10-05');
  const { groups, pairs, against } = await read('?season=2022');
  expect(groups).toEqual([expect.objectContaining({ key: '', name: '', cuttings: 5 })]);
  expect({ pairs, against }).toEqual({ pairs: [], against: null });
});

test('next year both are stuck of each tree, the same for the same throw, with the chance to find a difference', async () => {
  const { groups: [a, b] } = await read('?season=2025');
  const layout = async (more = '') => TrialLayout.parse((await desk.get(`readings/comparison/layout?season=2025&first=${a?.key}&second=${b?.key}${more}`)).body);
  const said = await layout();
  expect(said.blocks.map(({ donor, order }) => [donor, [...order].sort()])).toEqual([['CR-1', ['first', 'second']], ['CR-2', ['first', 'second']]]);
  expect(said).toMatchObject({ first: { key: a?.key }, toFind: 0.2, usual: { donors: 2 } });
  expect(said.sizes.map(({ cuttingsEach }) => cuttingsEach)).toEqual([4, 8, 12, 16, 24]);
  expect(said.sizes.at(-1)!.chance).toBeGreaterThan(said.sizes[0]!.chance);
  expect(await layout()).toEqual(said);
  expect((await desk.get(`readings/comparison/layout?first=${a?.key}&second=${a?.key}`)).body.type).toBe('/problems/comparison/nothing-to-compare');
});

test('the table has a line a group, with the pair beside it', async () => {
  const answer = await api.app.inject({ url: '/api/v1/programmes/harrowdale/readings/comparison.csv?season=2025', headers: place.volunteer.headers });
  const lines = answer.body.trimEnd().split('\r\n');
  expect(answer.headers['content-type']).toContain('text/csv');
  expect(lines).toHaveLength(3);
  expect(lines[0]).toContain('odds ratio');
});

test('a place to stand now is no filter, and a partner is told of the own stand without recipes and benches', async () => {
  expect((await desk.get(`readings/comparison?placeId=${place.bench}`)).status).toBe(422);
  const partner = desk.as(await member(api, 'partner', 'harrowdale', { partnerId: place.partnerId }));
  const told = Comparison.parse((await partner.get('readings/comparison?by=recipe&season=2025')).body);
  expect(told.groups.map(({ key, cuttings }) => [key, cuttings])).toEqual([['', 960]]);
  expect(Comparison.parse((await partner.get('readings/comparison?by=place')).body).groups.map(({ name }) => name)).toEqual(['']);
  expect(Comparison.parse((await desk.as(await member(api, 'partner')).get('readings/comparison')).body).groups).toEqual([]);
});

import { describe, expect, test } from 'vitest';
import { Diversity, DonorHoldings, DonorsAtRisk, Funnels, ReadingChoices } from '@sprigline/contract';
import { testApi } from '../../../../test/support/api.ts';
import { byHand, standByHand, stickingByHand, taxonByHand, treeByHand } from '../../../../test/support/books-by-hand.ts';
import { asOwner, member } from '../../../../test/support/people.ts';

const api = await testApi();
const { headers, programmeId } = await member(api, 'volunteer');

// Corran Ridge: juniper trees A and B, of which B and B2 are one clone, and D, which is dead; a yew Y.
// Lowmire Wood: one juniper E.
const ids = await asOwner(api, async (sql) => {
  const hand = await byHand(sql, programmeId);
  const juniper = await taxonByHand(hand, 'Juniperus communis', 'Juniper');
  const yew = await taxonByHand(hand, 'Taxus baccata', 'Yew');
  const [corran, lowmire] = [await standByHand(hand, 'Corran Ridge'), await standByHand(hand, 'Lowmire Wood')];
  const tree = (label: string, more = {}) => treeByHand(hand, { label, standId: corran, taxonId: juniper, ...more });
  const [a, b] = [await tree('CR-A', { ageClass: 'old' }), await tree('CR-B')];
  await tree('CR-B2', { cloneGroupId: b });
  await sql.query('UPDATE donor_tree SET clone_group_id = $2 WHERE id = $1', [b, b]);
  const [d, e] = [await tree('CR-D', { state: 'dead' }), await tree('LW-E', { standId: lowmire })];
  const y = await tree('CR-Y', { taxonId: yew });
  const stick = (treeId: string | null, stuckOn: string, stages: Parameters<typeof stickingByHand>[2], more = {}) =>
    stickingByHand(hand, { taxonId: juniper, treeId, stuckOn, ...more }, stages);
  await stick(a, '2024-11-20', { cutting: { cameIn: 20, goneOn: 10, died: { rot: 4, dry: 1 }, notRooted: 5 }, liner: { cameIn: 10, here: 8, died: { frost: 2 } } });
  await stick(a, '2025-11-20', { cutting: { cameIn: 10, here: 9, died: { rot: 1 } } });
  await stick(b, '2024-11-20', { cutting: { cameIn: 20, goneOn: 2, unaccounted: 18 }, liner: { cameIn: 2, here: 2 } });
  await stick(d, '2024-12-02', { cutting: { cameIn: 10, here: 10, rooted: 3 } });
  await stick(e, '2024-11-20', { cutting: { cameIn: 5, here: 5 } });
  await stick(y, '2024-11-20', { cutting: { cameIn: 7, here: 7 } }, { taxonId: yew });
  await stick(null, '2024-11-20', { potted: { cameIn: 4, here: 4 } }, { mayBe: [a, d] });
  return { corran, lowmire, juniper, yew, a, b, d };
});

const ask = (path: string) => api.app.inject({ url: `/api/v1/programmes/harrowdale/readings/${path}`, headers });
const read = async <T>(path: string, contract: { parse: (answer: unknown) => T }): Promise<T> => {
  const answer = await ask(path);
  expect(answer.statusCode, answer.body).toBe(200);
  return contract.parse(answer.json());
};

describe('funnels', () => {
  test('a stand of two species makes two funnels, and plants of an unknown donor count for the stand that it must be of', async () => {
    const { groups } = await read('funnels?by=stand', Funnels);
    expect(groups.map(({ name, commonName, standId }) => [name, commonName, standId])).toEqual([
      ['Corran Ridge', 'Juniper', ids.corran], ['Corran Ridge', 'Yew', ids.corran], ['Lowmire Wood', 'Juniper', ids.lowmire],
    ]);
    const [cutting, liner, potted] = groups[0]!.stages;
    // Stuck 20 + 10 of A, 20 of B, 10 of D. Settled: 12 gone on of 12 + 6 died + 18 unaccounted + 5 not rooted.
    expect(cutting).toMatchObject({ reached: 60, goneOn: 12, here: 19, died: { rot: 5, dry: 1 }, donors: { reached: 3, here: 2, left: 3 } });
    expect(cutting!.survival).toMatchObject({ rate: 12 / 41, settled: 41, undecided: 19, needsRange: true, isRankable: true });
    expect(liner).toMatchObject({ reached: 12, donors: { reached: 2, left: 2 } });
    expect(potted).toMatchObject({ reached: 4, donors: { reached: 0, left: 0 } });
    expect(groups[0]).toMatchObject({ firstStuckOn: '2024-11-20', lastStuckOn: '2025-11-20', donors: { came: 3, left: 3 } });
  });

  test('the day of the verdict is the latest of those that still have cuttings, by the days of their own species', async () => {
    const { groups } = await read('funnels?by=stand', Funnels);
    // Juniper of Corran Ridge waits of 2025-11-20, 2024-12-02; yew and Lowmire Wood of 2024-11-20. A year, unless a species says otherwise.
    expect(groups.map(({ verdictOn }) => verdictOn)).toEqual(['2026-11-20', '2025-11-20', '2025-11-20']);
    const decided = await read(`funnels?standId=${ids.corran}&taxonId=${ids.juniper}&season=2024&donorTreeId=${ids.b}`, Funnels);
    expect(decided.groups.map(({ verdictOn }) => verdictOn)).toEqual([null]);

    await asOwner(api, (sql) => sql.query('UPDATE taxon SET verdict_days = 500 WHERE id = $1', [ids.yew]));
    expect((await read('funnels?by=stand', Funnels)).groups[1]?.verdictOn).toBe('2026-04-04');
  });

  test('donors of one clone are one donor, named by all their labels', async () => {
    const { groups } = await read(`funnels?standId=${ids.corran}&taxonId=${ids.juniper}&season=2024`, Funnels);
    expect(groups[0]!.stages[0]!.byDonor).toMatchObject({
      kind: 'best-and-worst', donors: 2, best: { label: 'CR-A', treeId: ids.a, successes: 10, plants: 20 }, worst: { label: 'CR-B = CR-B2', treeId: ids.b },
    });
  });

  test.each([
    ['season=2025', 10], ['season=2024&taxonId=TAXON', 55], ['ageClass=old', 30], ['standId=STAND', 5], ['season=1999', undefined],
  ])('%s lets through what it says', async (filter, reached) => {
    const { groups } = await read(`funnels?${filter.replace('TAXON', ids.juniper).replace('STAND', ids.lowmire)}`, Funnels);
    expect(groups[0]?.stages[0]?.reached).toBe(reached);
  });

  test('seasons are told apart by the month in which the programme begins them', async () => {
    const { groups } = await read('funnels?by=season', Funnels);
    expect(groups.map(({ name }) => name)).toEqual(['2024/25', '2025/26']);
  });

  test('a filter that is none is refused, and not read as everything', async () => {
    expect((await ask('funnels?standId=Corran')).statusCode).toBe(422);
    expect((await ask('funnels?stand=Corran')).statusCode).toBe(422);
  });
});

test('diversity counts donors by clone, and what is unsure between at least and at most', async () => {
  const { stands } = await read(`diversity?standId=${ids.corran}`, Diversity);
  expect(stands.map(({ commonName, donorTrees, assumedDistinct }) => [commonName, donorTrees, assumedDistinct])).toEqual([['Juniper', 4, 2], ['Yew', 1, 1]]);
  const [cutting, liner, potted] = stands[0]!.stages;
  expect(cutting).toMatchObject({ donors: 2, plants: 19, perDonor: [10, 9], largest: { label: 'CR-D' } });
  expect(liner).toMatchObject({ donors: 2, perDonor: [8, 2], largest: { label: 'CR-A', share: 0.8 }, capture: expect.closeTo(1 - 0.95 ** 4, 12) });
  expect(potted).toMatchObject({ donors: 0, mixedPlants: 4, withMixed: { atLeast: 1, atMost: 2 } });
});

test('donors stand with the fewest rooted plants first; those nobody told last', async () => {
  const { donors } = await read('donors', DonorHoldings);
  expect(donors.map(({ label, rootedNow }) => [label, rootedNow])).toEqual([['CR-B = CR-B2', 2], ['CR-D', 3], ['CR-A', 8], ['LW-E', null], ['CR-Y', null]]);
});

test('at risk are few rooted plants, and first of all the last copies of a dead tree', async () => {
  const { donors, notTold } = await read('donors-at-risk', DonorsAtRisk);
  expect(donors.map(({ label, risks }) => [label, risks])).toEqual([
    ['CR-D', ['few-rooted', 'one-place', 'last-copies']], ['CR-B = CR-B2', ['few-rooted', 'one-place']],
  ]);
  expect(notTold).toBe(2);
});

test('choices name what there is', async () => {
  const choices = await read('choices', ReadingChoices);
  expect(choices).toMatchObject({ taxa: [{ name: 'Juniper' }, { name: 'Yew' }], seasons: [{ year: 2025, name: '2025/26' }, { year: 2024, name: '2024/25' }] });
  expect(choices.places).toHaveLength(1);
});

test.each([['funnels.csv?by=stand', 12], ['diversity.csv', 12], ['donors.csv', 5], ['donors-at-risk.csv', 2]])('%s is a table with a line for each', async (path, lines) => {
  const answer = await ask(path);
  expect(answer.headers).toMatchObject({ 'content-type': 'text/csv; charset=utf-8; header=present', 'content-disposition': expect.stringContaining('.csv"') });
  const rows = answer.body.trimEnd().split('\r\n').map((line) => line.split(',').length);
  expect(rows).toHaveLength(lines + 1);
  expect(answer.body).toContain('Corran Ridge');
});

test('another programme sees none of it, and a partner may not ask', async () => {
  const elsewhere = await member(api, 'owner', 'elsewhere');
  const theirs = await api.app.inject({ url: '/api/v1/programmes/elsewhere/readings/funnels?by=stand', headers: elsewhere.headers });
  expect(theirs.json()).toMatchObject({ groups: [] });
  expect((await api.app.inject({ url: '/api/v1/programmes/harrowdale/readings/funnels', headers: elsewhere.headers })).statusCode).toBe(404);
  const partner = await member(api, 'partner');
  expect((await api.app.inject({ url: '/api/v1/programmes/harrowdale/readings/donors', headers: partner.headers })).statusCode).toBe(403);
});

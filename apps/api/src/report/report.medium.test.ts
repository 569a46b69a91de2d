import { beforeAll, describe, expect, test } from 'vitest';
import { FunderReport, HandoverReport, LandownerReport } from '@sprigline/contract';
import { testApi } from '../../../../test/support/api.ts';
import { Desk, nursery } from '../../../../test/support/nursery.ts';
import { asOwner, member, newId } from '../../../../test/support/people.ts';

const api = await testApi();
const place = await nursery(api);
const desk = new Desk(api, place);
const seeing = desk.as(await member(api, 'coordinator', 'harrowdale', { seesExact: true }));

// CR-1: 60 stuck, 5 die, 30 lifted, 20 of them potted, 12 of these planted in October 2026, 3 given to a stranger.
// CR-2: 40 stuck, 10 lifted, 4 of them planted; six weeks later all 16 planted trees are checked.
const id = { L: newId(), P: newId(), T: newId(), K: newId(), U: newId(), S: newId(), permission: newId(), request: newId(), back: newId() };
const stuck = { one: '', two: '' };

beforeAll(async () => {
  stuck.one = (await desk.stick(60, { label: 'A' }, '2025-10-02')).batchId;
  stuck.two = (await desk.stick(40, { label: 'B', bundleId: place.bundles[1], placeId: place.trays[1] }, '2025-10-02')).batchId;
  await asOwner(api, async (sql) => {
    await sql.query(`INSERT INTO permission (programme_id, id, granted_by, land, stand_id, quota, valid_from, plants_owed_back) VALUES ($1, $2, 'The commoners', 'Corran common', $3, 400, '2025-09-01', 25)`, [place.programmeId, id.permission, place.standId]);
    await sql.query('UPDATE trip SET permission_id = $2 WHERE id = $1', [place.tripId, id.permission]);
    await sql.query('INSERT INTO exact_place (programme_id, id, donor_tree_id, latitude, longitude) VALUES ($1, $2, $3, 46.123457, -27.765432)', [place.programmeId, newId(), place.donors[0]]);
    await sql.query(`UPDATE place SET note = 'keys behind the blue door' WHERE id = $1`, [place.house]);
  });
  const written = await desk.write([
    desk.entry('2026-01-10', { kind: 'died', batchId: stuck.one, n: 5, cause: 'rot' }),
    desk.entry('2026-03-01', { kind: 'lifted', batchId: stuck.one, toBatchId: id.L, n: 30, placeId: place.bench, label: 'L' }),
    desk.entry('2026-03-02', { kind: 'lifted', batchId: stuck.two, toBatchId: id.K, n: 10, placeId: place.bench, label: 'K' }),
    desk.entry('2026-05-01', { kind: 'potted', batchId: id.L, toBatchId: id.P, n: 20, placeId: place.house, label: 'P' }),
    desk.entry('2026-06-01', { kind: 'givenOut', batchId: id.P, toBatchId: id.S, n: 2, partnerId: place.partnerId, placeId: place.site, label: 'S' }),
    desk.entry('2026-06-02', { kind: 'givenOut', batchId: id.P, n: 3, outside: 'Thornber fair' }),
    desk.entry('2026-10-05', { kind: 'planted', batchId: id.P, toBatchId: id.T, n: 12, placeId: place.plot, label: 'T' }),
    desk.entry('2026-10-05', { kind: 'planted', batchId: id.K, toBatchId: id.U, n: 4, placeId: place.plot, label: 'U' }),
    desk.entry('2026-11-16', { kind: 'checked', batchId: id.T, alive: 8, dead: [{ n: 2, cause: 'dry' }], notFound: 1, notLooked: 1 }),
    desk.entry('2026-11-16', { kind: 'checked', batchId: id.U, alive: 3, dead: [{ n: 1, cause: 'dry' }], notFound: 0, notLooked: 0 }),
    desk.entry('2026-11-20', { kind: 'held', batchId: id.L, reason: 'brown roots' }),
  ]);
  expect(written.map(({ status }) => status)).toEqual(written.map(() => 'written'));
  // Five were set aside when they were there; three are left.
  await asOwner(api, async (sql) => {
    await sql.query(`INSERT INTO request (programme_id, id, partner_id, taxon_id, stage, plants, asked_on, wanted_on, state) VALUES ($1, $2, $3, $4, 'potted', 8, '2026-09-01', '2027-02-26', 'promised')`, [place.programmeId, id.request, place.partnerId, place.taxonId]);
    await sql.query('INSERT INTO reservation (programme_id, request_id, batch_id, n) VALUES ($1, $2, $3, 5)', [place.programmeId, id.request, id.P]);
  });
});

const landowner = async (query: string, by = desk) => {
  const { status, body } = await by.get(`reports/landowner?${query}`);
  expect(status, JSON.stringify(body)).toBe(200);
  return LandownerReport.parse(body);
};
const funder = async (query: string) => FunderReport.parse((await desk.get(`reports/funder?${query}`)).body);

describe('a landowner', () => {
  test('reads what came of each tree, worked by hand', async () => {
    const { trees, sum, sites, subject } = await landowner(`standId=${place.standId}`);
    expect(subject).toEqual({ kind: 'stand', name: 'Corran Ridge' });
    expect(trees).toMatchObject([
      // 60 = 25 cuttings + 10 young plants + 5 potted (2 of them with the partner, as potted) + 10 planted + 7 lost + 3 given out.
      { label: 'CR-1', taken: 200, stuck: 60, rooted: 30, potted: 20, planted: 12, lost: 7, givenOut: 3, alive: 50, aliveBy: { cutting: 25, liner: 10, potted: 5, planted: 10 }, sites: [{ name: 'Lowmire Wood', planted: 12, alive: 10 }] },
      { label: 'CR-2', taken: 200, stuck: 40, rooted: 10, potted: 0, planted: 4, lost: 1, alive: 39, aliveBy: { cutting: 30, liner: 6, potted: 0, planted: 3 } },
    ]);
    expect(sum).toMatchObject({ taken: 400, stuck: 100, planted: 16, lost: 8, givenOut: 3, alive: 89 });
    expect(sites).toEqual([{ name: 'Lowmire Wood', planted: 16, alive: 13 }]);
    for (const tree of [...trees, sum]) expect(tree.alive + tree.lost + tree.givenOut + tree.mixedAway).toBe(tree.stuck + tree.received + tree.found);
  });

  test('reads the books of an earlier day', async () => {
    const { sum, sites, asOf } = await landowner(`partnerId=${place.partnerId}&asOf=2026-05-31`);
    expect({ asOf, sites }).toEqual({ asOf: '2026-05-31', sites: [] });
    expect(sum).toMatchObject({ stuck: 100, rooted: 40, potted: 20, planted: 0, lost: 5, givenOut: 0, alive: 95, aliveBy: { cutting: 55, liner: 20, potted: 20, planted: 0 } });
    expect((await desk.get(`reports/landowner?standId=${place.standId}&asOf=2999-01-01`)).body).toMatchObject({ type: '/problems/report/day-in-future', status: 422 });
  });

  test('is told what is owed, and what was given back, by those who may see permissions', async () => {
    expect((await landowner(`standId=${place.standId}`, desk.as(place.volunteer))).owed).toBeNull();
    expect((await landowner(`standId=${place.standId}`, seeing)).owed).toEqual({ plants: 25, givenBack: 2 });
    const byPermission = await landowner(`permissionId=${id.permission}`, seeing);
    expect(byPermission).toMatchObject({ subject: { kind: 'permission', name: 'Corran common' }, sum: { taken: 400, stuck: 100 }, owed: { plants: 25 } });
    // Three went to the fair for a request that names the permission, and so did the partner's two, which count once.
    await asOwner(api, async (sql) => {
      await sql.query(`INSERT INTO request (programme_id, id, outside, taxon_id, stage, plants, asked_on, permission_id, state, gone_on) VALUES ($1, $2, 'Thornber fair', $3, 'potted', 5, '2026-05-01', $4, 'gone', '2026-06-02')`, [place.programmeId, id.back, place.taxonId, id.permission]);
      await sql.query(`INSERT INTO despatch (programme_id, request_id, entry_id, batch_id)
        SELECT programme_id, $2, id, $3 FROM entry WHERE programme_id = $1 AND kind = 'givenOut'`, [place.programmeId, id.back, id.P]);
    });
    expect((await landowner(`standId=${place.standId}`, seeing)).owed).toEqual({ plants: 25, givenBack: 5 });
    expect((await landowner(`permissionId=${id.permission}&asOf=2026-06-01`, seeing)).owed).toEqual({ plants: 25, givenBack: 2 });
    expect((await desk.as(place.volunteer).get(`reports/landowner?permissionId=${id.permission}`)).body).toMatchObject({ type: '/problems/place/grant-needed' });
    expect((await desk.get(`reports/landowner?standId=${newId()}`)).status).toBe(404);
    expect((await desk.get('reports/landowner')).status).toBe(422);
  });
});

describe('a funder', () => {
  test('reads both rates, the interval and the age, worked by hand', async () => {
    const { rows, totals } = await funder('');
    // Twelve and four planted, 42 days before the check: 11 alive, 3 dead, 1 not found, 1 left out.
    expect(rows).toMatchObject([{
      site: 'Lowmire Wood', season: '2026/27', taxon: 'Juniperus communis', planted: 16, alive: 11, dead: 3, notFound: 1, notLooked: 1, notChecked: 0, donors: 2, plots: 1,
      rates: { low: 11 / 15, high: 11 / 14 }, ageDays: { least: 42, most: 42 }, plantedOn: { first: '2026-10-05' }, checkedOn: { last: '2026-11-16' },
    }]);
    // Wilson 1927 by hand for 11 of 15: (11/15 + z²/30 ± z √(11/15·4/15/15 + z²/900)) / (1 + z²/15), z = 1.959964.
    expect(rows[0]?.rates?.wilsonLow.lower).toBeCloseTo(0.4805, 4);
    expect(rows[0]?.rates?.wilsonLow.upper).toBeCloseTo(0.8910, 4);
    expect(rows[0]?.byUnit).toBeUndefined();
    expect(totals).toMatchObject([{ taxon: 'Juniperus communis', planted: 16 }]);
  });

  test('before the check there is no rate, and nothing is called alive', async () => {
    const { rows } = await funder('asOf=2026-11-01');
    expect(rows).toMatchObject([{ planted: 16, notChecked: 16, alive: 0 }]);
    expect(rows[0]?.rates).toBeUndefined();
    expect((await funder('asOf=2026-09-01')).rows).toEqual([]);
  });

  test('one site, one season or one species', async () => {
    expect((await funder(`siteId=${place.site}&season=2026&taxonId=${place.taxonId}`)).rows).toHaveLength(1);
    expect((await funder('season=2025')).rows).toEqual([]);
    expect((await funder('')).choices).toMatchObject({ sites: [{ name: 'Lowmire Wood' }], seasons: [{ year: 2026, name: '2026/27' }] });
  });

  test('a check that was withdrawn is none; one mended counts as mended', async () => {
    const wrong = desk.entry('2026-11-18', { kind: 'checked', batchId: id.U, alive: 1, dead: [], notFound: 2, notLooked: 0 });
    await desk.write([wrong]);
    expect((await funder('')).rows[0]).toMatchObject({ notFound: 3 });
    await desk.write([desk.entry('2026-11-19', { kind: 'withdrawn', entryId: wrong.id, sawVersion: wrong.id, reason: 'another plot' })]);
    expect((await funder('')).rows[0]).toMatchObject({ notFound: 1, alive: 11 });
  });
});

test('a tree missed twice is dead to a funder, and not found no more', async () => {
  const again = desk.entry('2026-11-21', { kind: 'checked', batchId: id.T, alive: 9, dead: [], notFound: 1, notLooked: 0 });
  await desk.write([again]);
  expect((await funder('')).rows).toMatchObject([{ planted: 16, alive: 12, dead: 4, notFound: 0, notLooked: 0, rates: { low: 12 / 16, high: 12 / 16 } }]);
  expect((await funder('asOf=2026-11-20')).rows).toMatchObject([{ alive: 11, dead: 3, notFound: 1 }]);
  await desk.write([desk.entry('2026-11-22', { kind: 'withdrawn', entryId: again.id, sawVersion: again.id, reason: 'another plot' })]);
});

test('a handover names places, people, recipes, what is held and what waits', async () => {
  const report = HandoverReport.parse((await seeing.get('reports/handover')).body);
  expect(report.places).toMatchObject([{ name: 'House 1', plants: 25 + 30 + 10 + 6 + 3, note: 'keys behind the blue door' }, { name: 'Bench A', depth: 1 }, { name: 'Lowmire Wood', plants: 15 }, { name: 'P1' }]);
  expect(report.held).toMatchObject([{ label: 'L', n: 10, place: 'Bench A', reason: 'brown roots', since: '2026-11-20' }]);
  expect(report).toMatchObject({ recipes: [{ name: 'Heel, talc', version: 1 }], permissions: [{ land: 'Corran common', used: 400, quota: 400 }], unstuck: [] });
  // House 1 is walked every fortnight, and nobody has looked at all of it since.
  expect(report.due.places).toEqual(expect.arrayContaining([expect.objectContaining({ walk: expect.objectContaining({ name: 'Bench A' }), kinds: expect.arrayContaining([expect.objectContaining({ kind: 'round' })]) })]));
  expect(report.promised).toEqual([{ id: id.request, who: 'Thornber School', taxon: 'Juniperus communis', stage: 'potted', plants: 8, wantedOn: '2027-02-26', state: 'promised', covered: 3 }]);
  expect(report.people.map(({ role }) => role)).toEqual(['coordinator', 'coordinator', 'volunteer']);
  expect((await desk.as(place.volunteer).get('reports/handover')).status).toBe(403);
});

test.each([['landowner', 'STAND', 3], ['funder', '', 2]])('%s as a table', async (name, query, lines) => {
  const answer = await api.app.inject({ url: `/api/v1/programmes/harrowdale/reports/${name}.csv?${query.replace('STAND', `standId=${place.standId}`)}`, headers: desk.headers });
  expect(answer.statusCode).toBe(200);
  const rows = answer.body.trimEnd().split('\r\n');
  expect(rows).toHaveLength(lines + 1);
});

test('a handover as a table names each thing with its part', async () => {
  const { body } = await api.app.inject({ url: '/api/v1/programmes/harrowdale/reports/handover.csv', headers: desk.headers });
  const parts = body.trimEnd().split('\r\n').slice(1).map((row) => row.split(',')[0]);
  expect(new Set(parts)).toEqual(new Set(['place', 'held', 'due', 'request', 'permission', 'person', 'recipe']));
  expect(body).toContain('request,"Thornber School: Juniperus communis, potted",8,"promised, 3 set aside, wanted by 2027-02-26",');
});

test('no position leaves in any of them, nobody but the house reads them', async () => {
  const partner = desk.as(await member(api, 'partner'));
  for (const path of [`landowner?standId=${place.standId}`, `landowner?permissionId=${id.permission}`, 'funder', 'handover']) {
    expect(JSON.stringify((await seeing.get(`reports/${path}`)).body)).not.toMatch(/46\.1|27\.7|itude/);
    expect((await partner.get(`reports/${path}`)).status).toBe(403);
  }
});

test('an older log sheet begins at the sticking: what was stuck without a trip was taken as well', async () => {
  await desk.stick(7, { label: 'C', bundleId: undefined, donorTreeId: place.donors[1], placeId: place.trays[1] }, '2025-10-03');
  expect((await landowner(`standId=${place.standId}`)).trees).toMatchObject([{ taken: 200, stuck: 60 }, { taken: 207, stuck: 47 }]);
  expect((await landowner(`permissionId=${id.permission}`, seeing)).sum).toMatchObject({ taken: 400, stuck: 100 });
});

import { describe, expect, test } from 'vitest';
import { DonorsAtRisk, ReadingLines, SiteLines, SiteReading, TimeAxis } from '@sprigline/contract';
import { testApi } from '../../../../test/support/api.ts';
import { asOwner, newId } from '../../../../test/support/people.ts';
import { Desk, nursery } from '../../../../test/support/nursery.ts';

const api = await testApi({ presentTime: () => new Date('2026-08-01T12:00:00Z') });
const place = await nursery(api);
const desk = new Desk(api, place);

// Forty cuttings of the first tree, twenty of the second. Of the first, thirty are planted in October, of the second four.
// A check finds 20 alive, 6 dead and misses 4; a failed timer stops the mist over the first tray for two days.
const other = await asOwner(api, async (sql) => {
  const [standId, treeId] = [newId(), newId()];
  await sql.query('INSERT INTO stand (programme_id, id, name) VALUES ($1, $2, $3)', [place.programmeId, standId, 'Winterbeck Scar']);
  await sql.query('INSERT INTO donor_tree (programme_id, id, label, stand_id, taxon_id) VALUES ($1, $2, $3, $4, $5)', [place.programmeId, treeId, 'WS-1', standId, place.taxonId]);
  const bundleId = newId();
  await sql.query('INSERT INTO bundle (programme_id, id, trip_id, donor_tree_id, cuttings) VALUES ($1, $2, $3, $4, 100)', [place.programmeId, bundleId, place.tripId, treeId]);
  return { standId, bundleId };
});
const [planted, few] = [newId(), newId()];
const first = await desk.stick(40, {}, '2025-10-02');
const second = await desk.stick(20, { bundleId: place.bundles[1], placeId: place.trays[1] }, '2025-10-02');
await desk.stick(10, { bundleId: other.bundleId, placeId: place.trays[2] }, '2025-10-09');
const timer = desk.entry('2025-11-03', { kind: 'incident', placeId: place.trays[0], what: 'timerFailed', severity: 'serious', lastGoodOn: '2025-11-01', untilDay: '2025-11-03' });
const mistaken = desk.entry('2025-11-04', { kind: 'incident', placeId: place.house, what: 'frost', severity: 'slight' });
const look = desk.entry('2026-01-10', { kind: 'counted', batchId: second.batchId, alive: 19, look: 'look' });
const sure = await desk.write([
  timer, mistaken, look,
  desk.entry('2026-05-01', { kind: 'planted', batchId: first.batchId, toBatchId: planted, n: 30, placeId: place.plot }),
  desk.entry('2026-05-01', { kind: 'planted', batchId: second.batchId, toBatchId: few, n: 4, placeId: place.plot }),
  desk.entry('2026-07-01', { kind: 'checked', batchId: planted, alive: 20, dead: [{ n: 6, cause: 'dry', certainty: 'seen' }], notFound: 4 }),
  desk.entry('2026-07-01', { kind: 'checked', batchId: few, alive: 4 }),
]);
await desk.write([desk.entry('2025-11-05', { kind: 'withdrawn', entryId: mistaken.id, sawVersion: mistaken.id, reason: 'it was the other house' })]);

const read = async <T>(path: string, contract: { parse: (answer: unknown) => T }): Promise<T> => {
  const { status, body } = await desk.get(`readings/${path}`);
  expect(status, JSON.stringify(body)).toBe(200);
  return contract.parse(body);
};

test('the story of this file is written', () => {
  expect(sure.map(({ status }) => status)).toEqual(Array.from({ length: 7 }, () => 'written'));
});

describe('lines', () => {
  test('a line a stand and species, with what came so far of plants and of donor trees', async () => {
    const { inAll, lines } = await read('lines', ReadingLines);
    expect(inAll).toMatchObject({ lines: 2, here: 10 + 28 + 15 + 10, planted: 28 });
    const corran = lines.find(({ name }) => name === 'Corran Ridge');
    expect(corran).toMatchObject({ standId: place.standId, here: 53, planted: 28, donors: { came: 2, left: 2 } });
    expect(corran?.stages.map(({ stage, plants, donors }) => [stage, plants, donors])).toEqual([['cutting', 60, 2], ['liner', 34, 2], ['potted', 34, 2], ['planted', 34, 2]]);
    // Of sixty, 34 went on and one is missing; 25 wait.
    expect(corran?.undecidedShare).toBeCloseTo(25 / 60, 12);
  });

  test('come in parts that follow one another', async () => {
    const answer = await desk.get('readings/lines?limit=1');
    const next = /<([^>]+)>; rel="next"/.exec(String(answer.headers['link']))?.[1] ?? '';
    const rest = await read(`lines?limit=1&after=${new URL(next, 'http://here').searchParams.get('after') ?? ''}`, ReadingLines);
    expect(new Set([...ReadingLines.parse(answer.body).lines, ...rest.lines].map(({ name }) => name))).toEqual(new Set(['Corran Ridge', 'Winterbeck Scar']));
    expect((await desk.get('readings/lines?after=nonsense')).status, 'a cursor that nobody gave').toBe(400);
  });

  test('follow the filter, as the table for a spreadsheet does', async () => {
    const { lines } = await read(`lines?standId=${other.standId}`, ReadingLines);
    expect(lines.map(({ name }) => name)).toEqual(['Winterbeck Scar']);
    const csv = await api.app.inject({ url: `/api/v1/programmes/harrowdale/readings/lines.csv?standId=${other.standId}`, headers: desk.headers });
    expect(csv.body.trimEnd().split('\r\n')).toHaveLength(2);
    expect(csv.body).toContain('Winterbeck Scar,Juniperus communis,1,1,');
  });
});

describe('time axis', () => {
  test('ends with what is here, and begins at none', async () => {
    const { points } = await read('time-axis', TimeAxis);
    expect(points[0]).toMatchObject({ cutting: 0, planted: 0 });
    expect(points.at(-1)).toMatchObject({ day: '2026-08-01', cutting: 35, liner: 0, potted: 0, planted: 28 });
    expect(points.find(({ day }) => day >= '2025-10-10')).toMatchObject({ cutting: 70 });
    expect(points.reduce((sum, { looked }) => sum + looked, 0)).toBe(3);
  });

  test('shows incidents that stand, where plants of the reading stood', async () => {
    const { incidents } = await read('time-axis', TimeAxis);
    expect(incidents).toEqual([{
      entryId: timer.id, placeId: place.trays[0], place: 'T1', what: 'timerFailed', severity: 'serious', from: '2025-11-01', until: '2025-11-03', batches: 1,
    }]);
    expect((await read(`time-axis?standId=${other.standId}`, TimeAxis)).incidents).toEqual([]);
  });

  test('as a table, a line a point', async () => {
    const csv = await api.app.inject({ url: '/api/v1/programmes/harrowdale/readings/time-axis.csv', headers: desk.headers });
    const { points } = await read('time-axis', TimeAxis);
    expect(csv.body.trimEnd().split('\r\n')).toHaveLength(points.length + 1);
    expect(csv.body).toContain('2025-11-01 timerFailed T1');
  });
});

describe('sites', () => {
  test('a line a site', async () => {
    const { sites } = await read('sites', SiteLines);
    expect(sites).toEqual([{ siteId: place.site, name: 'Lowmire Wood', came: 34, alive: 24, notFound: 4, lost: 6, donors: 2, lastCheckedOn: '2026-07-01' }]);
  });

  test('one site with both rates, by donor tree, and check by check', async () => {
    const { stands, donors, checks } = await read(`sites/${place.site}`, SiteReading);
    // 24 alive of 30 decided; with the four not found as lost, 24 of 34.
    expect(stands[0]?.planted.survival).toMatchObject({ rate: 24 / 30, range: { lower: 24 / 34, upper: 28 / 34 } });
    expect(stands[0]?.diversity).toMatchObject({ donors: 2, perDonor: [24, 4] });
    expect(donors.map(({ donor, came, alive, notFound, died }) => [donor?.label, came, alive, notFound, died])).toEqual([['CR-1', 30, 20, 4, 6], ['CR-2', 4, 4, 0, 0]]);
    expect(checks).toEqual([{ day: '2026-07-01', plotId: place.plot, plot: 'P1', alive: 24, dead: 6, notFound: 4, notLooked: 0 }]);
  });

  test('a filter leaves out what is not meant, and a place that is no site is not there', async () => {
    const { donors, checks } = await read(`sites/${place.site}?donorTreeId=${place.donors[1]}`, SiteReading);
    expect(donors.map(({ donor }) => donor?.label)).toEqual(['CR-2']);
    expect(checks).toMatchObject([{ alive: 4, dead: 0 }]);
    expect((await desk.get(`readings/sites/${place.house}`)).status).toBe(404);
  });
});

test('donor trees at risk come in parts, and know how many they are', async () => {
  const all = await read('donors', DonorsAtRisk.pick({ inAll: true, donors: true }));
  const part = await desk.get('readings/donors?limit=2');
  expect(part.body).toMatchObject({ inAll: 3, donors: all.donors.slice(0, 2) });
  const after = /after=([^>&]+)/.exec(String(part.headers['link']))?.[1] ?? '';
  expect((await desk.get(`readings/donors?limit=2&after=${after}`)).body).toMatchObject({ inAll: 3, donors: all.donors.slice(2) });
});

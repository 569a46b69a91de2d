import { beforeAll, describe, expect, test } from 'vitest';
import { Trace } from '@sprigline/contract';
import { testApi } from '../../../../test/support/api.ts';
import { Desk, nursery } from '../../../../test/support/nursery.ts';
import { asOwner, member, newId } from '../../../../test/support/people.ts';

const api = await testApi();
const place = await nursery(api);
const desk = new Desk(api, place);

const ask = async (query: string): Promise<Trace> => {
  const { status, body } = await desk.get(`trace?${query}`);
  expect(status, JSON.stringify(body)).toBe(200);
  return Trace.parse(body);
};
const labels = (list: readonly { label: string | null }[]) => list.map(({ label }) => label).sort();
const ofWay = (trace: Trace, way: string) => labels(trace.batches.filter((batch) => batch.way === way));

// Two trays of CR-1 and one of CR-2. A is lifted into L, C into K; six of each are mixed into M. Of L five are planted and
// one goes to a partner; of M two go to a stranger. A second lift out of A is withdrawn. D stood beside A for three weeks.
const id = { L: newId(), K: newId(), M: newId(), P: newId(), S: newId(), W: newId() };
let [A, B, C, D] = ['', '', '', ''];
const filling = newId();

beforeAll(async () => {
  const stick = async (n: number, label: string, more: Record<string, unknown>, day: string) => (await desk.stick(n, { label, ...more }, day)).batchId;
  A = await stick(40, 'A', {}, '2025-10-02');
  B = await stick(30, 'B', { placeId: place.trays[1] }, '2025-10-02');
  C = await stick(30, 'C', { placeId: place.trays[2], bundleId: place.bundles[1] }, '2025-10-02');
  D = await stick(10, 'D', { bundleId: place.bundles[1] }, '2025-10-10');
  const wrong = desk.entry('2026-03-01', { kind: 'lifted', batchId: A, toBatchId: id.W, n: 3, placeId: place.trays[1], label: 'W' });
  await desk.write([
    desk.entry('2025-10-31', { kind: 'moved', batchId: D, placeId: place.bench }),
    desk.entry('2026-03-01', { kind: 'lifted', batchId: A, toBatchId: id.L, n: 12, placeId: place.bench, label: 'L' }),
    wrong,
    desk.entry('2026-03-01', { kind: 'lifted', batchId: C, toBatchId: id.K, n: 6, placeId: place.house, label: 'K' }),
    desk.entry('2026-03-02', { kind: 'mixed', toBatchId: id.M, placeId: place.house, label: 'M', parts: [{ batchId: id.L, n: 6 }, { batchId: id.K, n: 6 }] }),
  ], { door: 'outbox' });
  await desk.write([
    desk.entry('2026-03-05', { kind: 'withdrawn', entryId: wrong.id, sawVersion: wrong.id, reason: 'was another tray' }),
    desk.entry('2026-04-01', { kind: 'planted', batchId: id.L, toBatchId: id.P, n: 5, placeId: place.plot, label: 'P' }),
    desk.entry('2026-04-02', { kind: 'givenOut', batchId: id.L, toBatchId: id.S, n: 1, partnerId: place.partnerId, placeId: place.site, label: 'S' }),
    desk.entry('2026-04-03', { kind: 'givenOut', batchId: id.M, n: 2, outside: 'Thornber fair' }),
  ], { door: 'outbox' });
  await asOwner(api, (sql) => sql.query(
    `INSERT INTO tray_filling (programme_id, id, place_id, filled_on, medium, medium_lot) VALUES ($1, $2, $3, '2025-10-01', 'sand:peat', 'LOT 7'), ($1, $4, $3, '2026-02-01', 'sand:peat', 'LOT 8')`,
    [place.programmeId, filling, place.trays[0], newId()],
  ));
});

describe('from a batch', () => {
  test('back to the wild tree, and on to what came of it', async () => {
    const trace = await ask(`batchId=${id.L}`);
    expect({ from: ofWay(trace, 'from'), itself: ofWay(trace, 'itself'), to: ofWay(trace, 'to') }).toEqual({ from: ['A'], itself: ['L'], to: ['M', 'P', 'S'] });
    expect(trace).toMatchObject({ isCut: false, subject: { name: 'L' }, donorTrees: [{ label: 'CR-1', perhaps: false }], trips: [{ wentOn: '2025-10-01', stand: 'Corran Ridge' }] });
    expect(trace.batches.find(({ label }) => label === 'M')).toMatchObject({ n: 10, path: ['House 1'], holder: null, since: '2026-03-02', from: [{ label: 'K', n: 6 }, { label: 'L', n: 6 }] });
  });

  test('who has the plants now: at a site, with a partner, given to a stranger in the words of the entry', async () => {
    const trace = await ask(`batchId=${A}`);
    expect(trace.batches.find(({ label }) => label === 'P')).toMatchObject({ n: 5, path: ['Lowmire Wood', 'P1'], holder: { name: 'Thornber School' } });
    expect(trace.outside).toMatchObject([{ label: 'M', n: 2, day: '2026-04-03', to: 'Thornber fair' }]);
    expect(trace.sums).toMatchObject({ batches: 5, plants: 28 + 10 + 5 + 1, givenOutside: 2 });
  });

  test('a mixed batch leads back to both trees, through all that was mixed', async () => {
    const trace = await ask(`batchId=${id.M}`);
    expect(ofWay(trace, 'from')).toEqual(['A', 'C', 'K', 'L']);
    expect(labels(trace.donorTrees)).toEqual(['CR-1', 'CR-2']);
  });

  test('an act that was withdrawn leads nowhere', async () => {
    expect(ofWay(await ask(`batchId=${A}`), 'to')).not.toContain('W');
    expect(ofWay(await ask(`batchId=${id.W}`), 'from')).toEqual([]);
  });

  test('what left before the plants came can’t have been those plants', async () => {
    const late = newId();
    await desk.write([desk.entry('2026-05-01', { kind: 'lifted', batchId: B, toBatchId: late, n: 4, placeId: place.bench, label: 'N' })]);
    // Of the same sticking as B, and joined by it after L had passed its plants on.
    await desk.write([desk.entry('2026-05-02', { kind: 'moved', batchId: late, toBatchId: newId(), n: 2, placeId: place.house, label: 'O' })]);
    expect(ofWay(await ask(`batchId=${late}`), 'to')).toEqual(['O']);
    expect(ofWay(await ask(`batchId=${B}`), 'to')).toEqual(['N', 'O']);
  });

  test('what stood beside it, and when', async () => {
    const { beside } = await ask(`batchId=${A}`);
    expect(beside.filter(({ label }) => label === 'D')).toMatchObject([
      { place: { name: 'T1' }, path: ['House 1', 'Bench A', 'T1'], from: '2025-10-10', until: '2025-10-31', n: 10, nowPath: ['House 1', 'Bench A'] },
      // L stood on the bench that D was carried to, until none of it was left.
      { place: { name: 'Bench A' }, from: '2026-03-01', until: '2026-04-02' },
    ]);
  });
});

describe('from other things', () => {
  test('a place: all that stood in it or in what lies in it, and where that went', async () => {
    const trace = await ask(`placeId=${place.trays[0]}`);
    expect(ofWay(trace, 'itself')).toEqual(['A', 'D']);
    expect(ofWay(trace, 'to')).toEqual(['L', 'M', 'P', 'S']);
    expect(ofWay(await ask(`placeId=${place.house}`), 'itself')).toEqual(expect.arrayContaining(['A', 'B', 'C', 'D', 'L', 'M']));
  });

  test('a place in some days only', async () => {
    expect(ofWay(await ask(`placeId=${place.trays[0]}&from=2025-11-15&until=2025-12-01`), 'itself')).toEqual(['A']);
    expect((await desk.get(`trace?placeId=${place.trays[0]}&from=2025-12-15&until=2025-12-01`)).status).toBe(422);
  });

  test('a tray carried elsewhere takes its past with it', async () => {
    const other = await asOwner(api, async (sql) => {
      const bench = newId();
      await sql.query(`INSERT INTO place (programme_id, id, kind, name, parent_id) VALUES ($1, $2, 'bench', 'Bench B', $3)`, [place.programmeId, bench, place.house]);
      return bench;
    });
    const moved = { id: newId(), toPlaceId: other, movedOn: '2026-01-10' };
    expect((await desk.post(`places/${place.trays[2]}/moves`, moved)).status).toBeLessThan(300);
    expect(ofWay(await ask(`placeId=${place.bench}&until=2025-12-01`), 'itself')).toContain('C');
    expect(ofWay(await ask(`placeId=${place.bench}&from=2026-02-01`), 'itself')).not.toContain('C');
    expect(ofWay(await ask(`placeId=${other}`), 'itself')).toEqual(['C']);
  });

  test('a filling of a tray: until it was filled anew; a lot of medium: all trays filled with it', async () => {
    expect(ofWay(await ask(`fillingId=${filling}`), 'itself')).toEqual(['A', 'D']);
    expect(ofWay(await ask('mediumLot=lot%207'), 'itself')).toEqual(['A', 'D']);
    expect(ofWay(await ask('mediumLot=LOT%208'), 'itself')).toEqual(['A']);
    expect((await desk.get('trace?mediumLot=never')).body).toMatchObject({ type: '/problems/record/unknown' });
  });

  test('a donor tree and a trip: all that came of them, mixed batches too', async () => {
    expect(labels((await ask(`donorTreeId=${place.donors[1]}`)).batches)).toEqual(['C', 'D', 'K', 'M']);
    expect(labels((await ask(`tripId=${place.tripId}`)).batches)).toEqual(['A', 'B', 'C', 'D', 'K', 'L', 'M', 'N', 'O', 'P', 'S']);
  });
});

test('a shortened answer says so, and counts what it left out', async () => {
  const trace = await ask(`batchId=${A}&limit=2`);
  expect(trace).toMatchObject({ isCut: true, sums: { batches: 5 } });
  expect(trace.batches).toHaveLength(2);
});

test('one thing is asked about, and one that is there', async () => {
  expect((await desk.get('trace')).status).toBe(422);
  expect((await desk.get(`trace?batchId=${A}&tripId=${place.tripId}`)).status).toBe(422);
  expect((await desk.get(`trace?batchId=${newId()}`)).status).toBe(404);
});

test('as a table: a row a batch, then what stood beside and what left', async () => {
  const answer = await api.app.inject({ url: `/api/v1/programmes/harrowdale/trace.csv?batchId=${A}`, headers: desk.headers });
  const rows = answer.body.trimEnd().split('\r\n');
  expect(rows[0]).toContain('part,label,stage,plants,held,place,since,until,holder,donor tree');
  expect(rows).toContainEqual(expect.stringContaining('went to,P,planted,5,,Lowmire Wood / P1,2026-04-01,,Thornber School,CR-1'));
  expect(rows).toContainEqual(expect.stringContaining('given out,M,,2,,,2026-04-03,,Thornber fair'));
  expect(new Set(rows.map((row) => row.split(',').length)).size).toBe(1);
});

test('no position leaves, and a partner or another programme gets nothing', async () => {
  await asOwner(api, (sql) => sql.query(
    'INSERT INTO exact_place (programme_id, id, donor_tree_id, latitude, longitude) VALUES ($1, $2, $3, 46.123457, -27.765432)', [place.programmeId, newId(), place.donors[0]],
  ));
  const seeing = await member(api, 'coordinator', 'harrowdale', { seesExact: true });
  expect(JSON.stringify((await desk.as(seeing).get(`trace?donorTreeId=${place.donors[0]}`)).body)).not.toMatch(/46\.1|27\.7|itude/);
  expect((await desk.as(await member(api, 'partner')).get(`trace?batchId=${A}`)).status).toBe(403);
  const outside = await member(api, 'owner', 'winterbeck');
  expect((await api.app.inject({ url: `/api/v1/programmes/winterbeck/trace?batchId=${A}`, headers: outside.headers })).statusCode).toBe(404);
});

test('everything in a trace is held by one entry, once', async () => {
  const before = await ask(`batchId=${A}`);
  const batchIds = before.batches.filter(({ n, held }) => n > 0 && !held).map((batch) => batch.id);
  const held = desk.entry('2026-05-10', { kind: 'held', batchIds, reason: 'Brown roots; sample sent.' });
  expect(await desk.write([held])).toMatchObject([{ status: 'written' }]);
  expect((await ask(`batchId=${A}`)).batches.filter(({ n }) => n > 0).map((batch) => batch.held)).toEqual(batchIds.map(() => true));
  expect(await desk.write([held])).toMatchObject([{ status: 'already' }]);
  expect(await desk.write([{ ...held, saying: { ...held.saying, batchIds: batchIds.slice(1) } }])).toMatchObject([{ status: 'refused', problem: { type: '/problems/entry/id-reused' } }]);
  expect(await desk.write([desk.entry('2026-05-11', { kind: 'moved', batchId: A, placeId: place.house })])).toMatchObject([{ status: 'refused', problem: { type: '/problems/batch/held' } }]);
  expect(await desk.write([desk.entry('2026-05-12', { kind: 'released', batchIds, reason: 'Nothing found.', result: 'clean' })])).toMatchObject([{ status: 'written' }]);
  expect((await ask(`batchId=${A}`)).batches.some((batch) => batch.held)).toBe(false);
  const both = desk.entry('2026-05-13', { kind: 'held', batchIds, placeId: place.house, reason: 'two things at once' });
  expect((await desk.post('entries', { entries: [both] })).status).toBe(422);
});

test('a hold on a lot of medium reaches what stands in the trays filled from it', async () => {
  await desk.write([desk.entry('2026-05-20', { kind: 'held', mediumLot: 'LOT 8', reason: 'bag smelt sour' })]);
  expect((await ask('mediumLot=LOT%208')).batches.find(({ label }) => label === 'A')?.held).toBe(true);
});

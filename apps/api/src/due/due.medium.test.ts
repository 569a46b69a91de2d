import { beforeEach, describe, expect, test } from 'vitest';
import { testApi } from '../../../../test/support/api.ts';
import { nursery, Desk } from '../../../../test/support/nursery.ts';
import { newId } from '../../../../test/support/people.ts';

// Every test lives through a stretch of its own: the clock is theirs.
let now = '2026-01-15';
const api = await testApi({ presentTime: () => new Date(`${now}T12:00:00Z`) });
const at = (day: string) => {
  now = day;
};

let desk: Desk;
let count = 0;
beforeEach(async () => {
  count += 1;
  desk = new Desk(api, await nursery(api, `due-${count}`));
});

interface Item { key: string; kind: string; dueOn: string; day: string; place: { id: string; name: string }; walk: { name: string }; batch: { id: string } | null; putOff: { until: string; reason: string } | null; season: { name: string } | null; check: string | null }
const due = async (query = ''): Promise<Item[]> => (await desk.get(`due?${query}`)).body as Item[];
const kinds = async (query = '') => (await due(query)).map(({ kind, dueOn }) => `${kind} ${dueOn}`);
const count10 = (batchId: string, day: string, more: object = {}) => desk.write([desk.entry(day, { kind: 'counted', batchId, alive: 10, look: 'look', ...more })]);

describe('cuttings', () => {
  test('a first look from six weeks on, until somebody tugs or sees roots', async () => {
    const { batchId } = await desk.stick(10, {}, '2026-01-01');
    at('2026-02-11');
    expect(await kinds('kind=firstCheck')).toEqual([]);
    at('2026-02-12');
    expect(await due('kind=firstCheck')).toMatchObject([{ dueOn: '2026-02-12', place: { name: 'T1' }, walk: { name: 'Bench A' }, batch: { id: batchId }, wait: { days: 42, basis: 'default' } }]);

    await count10(batchId, '2026-02-12');
    expect(await kinds('kind=firstCheck'), 'a look from above is no check for roots').toEqual(['firstCheck 2026-02-12']);
    // Told late, of a day on which it was not due yet, but near.
    await count10(batchId, '2026-02-06', { look: 'tug', rooted: 0 });
    expect(await kinds('kind=firstCheck')).toEqual([]);
  });

  test('a check that was withdrawn was none; one of a sample is one', async () => {
    const { batchId } = await desk.stick(10, {}, '2026-01-01');
    at('2026-03-01');
    const [tug] = await count10(batchId, '2026-02-20', { look: 'tug', rooted: 0 });
    expect(await kinds('kind=firstCheck')).toEqual([]);
    await desk.write([desk.entry('2026-02-20', { kind: 'withdrawn', entryId: tug?.id, sawVersion: tug?.id, reason: 'another tray' })]);
    expect(await kinds('kind=firstCheck')).toEqual(['firstCheck 2026-02-12']);
    await desk.write([desk.entry('2026-02-25', { kind: 'counted', batchId, alive: 4, sampleOf: 4, look: 'tug', rooted: 0 })]);
    expect(await kinds('kind=firstCheck')).toEqual([]);
  });

  test('rooted ones are moved on, the rest is called; each entry closes its own', async () => {
    const { batchId } = await desk.stick(10, {}, '2026-01-01');
    at('2027-01-15');
    await count10(batchId, '2026-06-01', { look: 'lifted', rooted: 6 });
    expect((await kinds()).filter((one) => !one.startsWith('round'))).toEqual(['movingOn 2026-06-30', 'verdict 2027-01-01']);

    const { trays } = desk.nursery;
    await desk.write([desk.entry('2027-01-10', { kind: 'lifted', batchId, n: 6, toBatchId: newId(), placeId: trays[1] })]);
    expect((await kinds()).filter((one) => !one.startsWith('round'))).toEqual(['verdict 2027-01-01']);
    await desk.write([desk.entry('2027-01-11', { kind: 'called', batchId, n: 4 })]);
    expect((await kinds()).filter((one) => !one.startsWith('round'))).toEqual([]);
  });

  test('what the programme wrote of a species holds, and changes at once', async () => {
    await desk.stick(10, {}, '2026-01-01');
    at('2026-02-01');
    const { taxonId } = desk.nursery;
    const { body, headers } = await desk.get(`taxa/${taxonId}`);
    const { id: _, ...content } = body;
    const answer = await api.app.inject({
      method: 'PUT', url: `/api/v1/programmes/${desk.nursery.programme}/taxa/${taxonId}`, headers: { ...desk.headers, 'if-match': String(headers['etag']) }, payload: { ...content, firstCheckDays: 30 },
    });
    expect(answer.json()).toMatchObject({ firstCheckDays: 30, verdictDays: null });
    expect(await kinds('kind=firstCheck')).toEqual(['firstCheck 2026-01-31']);
    expect((await desk.get('due/days')).body).toMatchObject([{ taxonId, firstCheck: { days: 30, basis: 'written' }, verdict: { days: 365, basis: 'default' } }]);
  });

  test('five closed stickings of its own tell a programme its days', async () => {
    const { trays } = desk.nursery;
    at('2026-12-01');
    // Roots seen after 50, 60, 70, 80, 90 days; gone on ten days later: medians 70 and 80, the last of five 100.
    for (const after of [50, 60, 70, 80, 90]) {
      const { batchId } = await desk.stick(10, {}, '2026-01-01');
      const day = (days: number) => new Date(Date.UTC(2026, 0, 1 + days)).toISOString().slice(0, 10);
      await count10(batchId, day(after), { look: 'lifted', rooted: 10 });
      await desk.write([desk.entry(day(after + 10), { kind: 'lifted', batchId, n: 10, toBatchId: newId(), placeId: trays[1] })]);
      const days = (await desk.get('due/days')).body[0];
      expect(days.firstCheck.basis).toBe(after === 90 ? 'history' : 'default');
    }
    expect((await desk.get('due/days')).body).toMatchObject([{ firstCheck: { days: 70, basis: 'history', stickings: 5 }, movingOn: { days: 80 }, verdict: { days: 100 } }]);
  });
});

describe('rounds', () => {
  test('are done when all was looked at, by the interval of the nearest place that tells one', async () => {
    const { trays, bench, house } = desk.nursery;
    const [one, other] = [await desk.stick(10, {}, '2026-01-01'), await desk.stick(10, { placeId: trays[1], bundleId: desk.nursery.bundles[1] }, '2026-01-01')];
    at('2026-02-01');
    expect(await due('kind=round')).toMatchObject([{ dueOn: '2026-01-15', place: { name: 'Bench A' }, batches: 2, plants: 20, wait: { days: 14, basis: 'default' } }]);

    await every(house, 7);
    expect(await due('kind=round')).toMatchObject([{ dueOn: '2026-01-08', wait: { days: 7, basis: 'above' } }]);
    await count10(one.batchId, '2026-02-01');
    expect(await kinds('kind=round'), 'half a walk is none').toEqual(['round 2026-01-08']);
    await desk.write([desk.entry('2026-01-31', { kind: 'noted', batchId: other.batchId, text: 'feed sticks put in' })]);
    expect(await kinds('kind=round'), 'a note is no look').toEqual(['round 2026-01-08']);
    await desk.write([desk.entry('2026-01-31', { kind: 'noted', batchId: other.batchId, lookedOver: true })]);
    expect(await kinds('kind=round')).toEqual([]);
    expect(await kinds('kind=round&until=2026-02-07')).toEqual(['round 2026-02-07']);

    await every(trays[0], 2);
    expect((await due('kind=round&until=2026-02-07')).map(({ place, dueOn }) => [place.name, dueOn])).toEqual([['T1', '2026-02-03'], ['Bench A', '2026-02-07']]);
    expect((await due(`kind=round&until=2026-02-07&placeId=${trays[0]}`)).map(({ place }) => place.name)).toEqual(['T1']);
    expect(await due(`kind=round&until=2026-02-07&placeId=${bench}`)).toHaveLength(2);
  });

  async function every(placeId: string, roundEveryDays: number) {
    const { body, headers } = await desk.get(`places/${placeId}`);
    const { id: _, kind: __, parentId: ___, fillings: ____, ...content } = body;
    const url = `/api/v1/programmes/${desk.nursery.programme}/places/${placeId}`;
    const answer = await api.app.inject({ method: 'PUT', url, headers: { ...desk.headers, 'if-match': String(headers['etag']) }, payload: { ...content, roundEveryDays } });
    expect(answer.statusCode).toBe(200);
  }
});

describe('potted and planted', () => {
  async function planted(): Promise<string> {
    const { trays, plot } = desk.nursery;
    const { batchId } = await desk.stick(10, {}, '2024-01-01');
    const [pots, trees] = [newId(), newId()];
    await desk.write([
      desk.entry('2025-03-01', { kind: 'potted', batchId, n: 10, toBatchId: pots, placeId: trays[2] }),
      desk.entry('2025-11-20', { kind: 'planted', batchId: pots, n: 4, toBatchId: trees, placeId: plot }),
    ]);
    return trees;
  }

  test('potted plants are looked at for their grade every four weeks', async () => {
    at('2025-12-01');
    await planted();
    expect(await due('kind=gradeCheck')).toMatchObject([{ dueOn: '2025-03-29', plants: 6, wait: { days: 28 } }]);
  });

  test('trees of a season are checked at its end, then in the second spring', async () => {
    at('2026-10-05');
    const trees = await planted();
    expect(await due('kind=siteCheck')).toMatchObject([{ dueOn: '2026-09-30', place: { name: 'Lowmire Wood' }, season: { year: 2025, name: '2025/26' }, check: 'firstSeason', plants: 4, batches: 1 }]);
    expect((await due()).filter(({ kind, place }) => kind === 'round' && place.name === 'Lowmire Wood')).toEqual([]);

    await desk.write([desk.entry('2026-10-04', { kind: 'checked', batchId: trees, alive: 3, notFound: 1 })]);
    expect(await due('kind=siteCheck')).toEqual([]);
    expect(await due('kind=siteCheck&until=2027-04-01')).toMatchObject([{ dueOn: '2027-03-31', check: 'secondSpring' }]);

    // The tree is missed again, and lost: all were looked for once more.
    at('2027-04-05');
    await desk.write([desk.entry('2027-04-02', { kind: 'checked', batchId: trees, alive: 3, notFound: 1 })]);
    expect(await due('kind=siteCheck&until=2028-12-31')).toMatchObject([{ dueOn: '2028-09-30', check: 'thirdYear', plants: 3 }]);
  });
});

describe('putting off', () => {
  async function putOff(more: object) {
    const payload = { id: newId(), kind: 'round', placeId: desk.nursery.bench, dueOn: '2026-01-15', until: '2026-02-10', reason: 'snow on the track', ...more };
    const answer = await api.app.inject({ method: 'POST', url: `/api/v1/programmes/${desk.nursery.programme}/due/put-offs`, headers: desk.headers, payload });
    return { status: answer.statusCode, body: answer.payload === '' ? undefined : answer.json() };
  }

  test('hides until the day, then shows with its first day and the reason; a walk ends it', async () => {
    const { batchId } = await desk.stick(10, {}, '2026-01-01');
    at('2026-02-01');
    expect((await putOff({})).status).toBe(204);
    expect(await due('kind=round')).toEqual([]);
    at('2026-02-10');
    expect(await due('kind=round')).toMatchObject([{ dueOn: '2026-01-15', day: '2026-02-10', putOff: { until: '2026-02-10', reason: 'snow on the track' } }]);

    await count10(batchId, '2026-02-05');
    expect(await due('kind=round&until=2026-02-19')).toMatchObject([{ dueOn: '2026-02-19', day: '2026-02-19', putOff: null }]);
  });

  test('only of what is due, of that day, within a year; once however often it is sent', async () => {
    await desk.stick(10, {}, '2026-01-01');
    at('2026-02-01');
    const id = newId();
    expect([(await putOff({ id })).status, (await putOff({ id })).status]).toEqual([204, 204]);
    expect((await putOff({ id, reason: 'frost' })).body.type).toBe('/problems/due/id-reused');
    expect((await putOff({ dueOn: '2026-01-16' })).body).toMatchObject({ status: 409, type: '/problems/due/not-due-then' });
    expect((await putOff({ until: '2026-01-31' })).body.type).toBe('/problems/due/until-out-of-reach');
    expect((await putOff({ until: '2027-03-01' })).body.type).toBe('/problems/due/until-out-of-reach');
    expect((await putOff({ placeId: newId() })).body.type).toBe('/problems/due/not-due-then');
    expect((await putOff({ kind: 'verdict' })).status).toBe(422);
    expect((await desk.as(desk.nursery.volunteer).post('due/put-offs', { id: newId(), kind: 'round', placeId: desk.nursery.bench, dueOn: '2026-01-15', until: '2026-02-10', reason: 'snow' })).status).toBe(403);
  });
});

test('where to walk, the nearest day first, and a long list in parts', async () => {
  const { trays, bundles } = desk.nursery;
  for (const placeId of trays) await desk.stick(10, { placeId, bundleId: bundles[0] }, '2026-01-01');
  at('2026-02-12');
  expect((await desk.get('due/places')).body).toMatchObject({
    today: '2026-02-12', items: 4, more: 0,
    places: [{ walk: { name: 'Bench A' }, path: ['House 1'], day: '2026-01-15', items: 4, kinds: [{ kind: 'round', n: 1 }, { kind: 'firstCheck', n: 3, day: '2026-02-12' }] }],
  });

  expect((await inParts('due?limit=3')).map(({ kind, place }) => [kind, place.name])).toEqual([
    ['round', 'Bench A'], ['firstCheck', 'T1'], ['firstCheck', 'T2'], ['firstCheck', 'T3'],
  ]);
});

async function inParts(path: string): Promise<Item[]> {
  const { body, headers } = await desk.get(path);
  const items = [...(body as Item[])];
  for (let link = headers['link']; link !== undefined; ) {
    const next = await api.app.inject({ method: 'GET', url: /<([^>]+)>/.exec(String(link))?.[1] ?? '', headers: desk.headers });
    items.push(...(next.json() as Item[]));
    link = next.headers['link'];
  }
  return items;
}

test('potted plants in parts: the longest unseen first, then in walking order; one that was put off in its new turn', async () => {
  const { trays, bundles, programme } = desk.nursery;
  const pots: string[] = [];
  for (const [at, [placeId, day]] of ([[trays[1], '2026-02-01'], [trays[0], '2026-02-02'], [trays[2], '2026-02-01'], [trays[0], '2026-02-01']] as const).entries()) {
    const { batchId } = await desk.stick(10, { placeId: trays[0], bundleId: bundles[at % 2] }, '2025-01-01');
    pots.push(newId());
    await desk.write([desk.entry(day, { kind: 'potted', batchId, n: 10, toBatchId: pots[at], placeId, leavesNone: true })]);
  }
  at('2026-03-02');
  const putOff = { id: newId(), kind: 'gradeCheck', batchId: pots[2], dueOn: '2026-03-01', until: '2026-03-03', reason: 'snow' };
  const answer = await api.app.inject({ method: 'POST', url: `/api/v1/programmes/${programme}/due/put-offs`, headers: desk.headers, payload: putOff });
  expect(answer.statusCode, answer.body).toBe(204);

  at('2026-03-05');
  const walked = [[pots[3], '2026-03-01'], [pots[0], '2026-03-01'], [pots[1], '2026-03-02'], [pots[2], '2026-03-03']];
  for (const limit of [1, 2, 3, 9]) expect((await inParts(`due?kind=gradeCheck&limit=${limit}`)).map(({ batch, day }) => [batch?.id, day])).toEqual(walked);
  expect((await desk.get('due/places?kind=gradeCheck')).body).toMatchObject({ items: 4, places: [{ walk: { name: 'Bench A' }, day: '2026-03-01', kinds: [{ n: 4, day: '2026-03-01' }] }] });
  expect((await desk.get(`due/places?kind=gradeCheck&placeId=${trays[0]}`)).body).toMatchObject({ items: 2 });
});

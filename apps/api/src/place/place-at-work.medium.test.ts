// How a place is kept, what was read there, what went wrong and what was done: regimes, climate, incidents, treatments.
import { describe, expect, test } from 'vitest';
import { testApi } from '../../../../test/support/api.ts';
import { Asker } from '../../../../test/support/build.ts';
import { Desk, nursery } from '../../../../test/support/nursery.ts';
import { newId, signedIn } from '../../../../test/support/people.ts';

let now = new Date('2026-03-10T12:00:00Z');
const api = await testApi({ presentTime: () => now });
const at = await nursery(api);
const there = await nursery(api, 'winterbeck');
const ledger = new Desk(api, at);
const desk = new Asker(api, at.coordinator.headers);
const volunteer = new Asker(api, at.volunteer.headers);
const partner = new Asker(api, await signedIn(api, 'partner', 'harrowdale', { partnerId: at.partnerId }));
const outside = new Asker(api, there.coordinator.headers, 'winterbeck');
const [first, second] = at.trays;

const typeOf = ({ body }: { body: { type?: string } }): string | undefined => body.type;

describe('regimes', () => {
  const told = { id: newId(), fromDay: '2026-01-01', lightHours: 14, heatC: 18.5, air: 'mist', cover: 'lid', note: null };
  const later = { id: newId(), fromDay: '2026-03-01', lightHours: null, heatC: 12, air: null, cover: null, note: 'lamps taken down' };

  test('of a bench hold in its trays too, the last one that has begun, and a tray’s own before them', async () => {
    expect(await desk.post(`places/${at.bench}/regimes`, told)).toMatchObject({ status: 201, body: { ...told, placeId: at.bench, untilDay: null } });
    await desk.post(`places/${at.bench}/regimes`, later);
    const { body } = await volunteer.get(`places/${first}/regimes`);
    expect(body).toMatchObject({ now: { id: later.id, placeName: 'Bench A' }, own: [] });
    expect((await volunteer.get(`places/${at.bench}/regimes`)).body.own).toMatchObject([{ id: later.id, untilDay: null }, { id: told.id, untilDay: '2026-03-01' }]);
    const own = { id: newId(), fromDay: '2026-03-05', lightHours: null, heatC: null, air: 'air', cover: 'fleece', note: null };
    await desk.post(`places/${second}/regimes`, own);
    expect((await volunteer.get(`places/${second}/regimes`)).body).toMatchObject({ now: { id: own.id, placeName: 'T2' } });
    expect((await volunteer.get(`places/${at.house}/regimes`)).body).toEqual({ now: null, own: [] });
  });

  test('written late find their days; what has not begun does not hold yet', async () => {
    const [before, toCome] = [{ ...told, id: newId(), fromDay: '2025-11-01', heatC: 20 }, { ...told, id: newId(), fromDay: '2026-04-01' }];
    for (const regime of [toCome, before]) await desk.post(`places/${at.bench}/regimes`, regime);
    const { body } = await volunteer.get(`places/${at.bench}/regimes`);
    expect(body.now.id).toBe(later.id);
    expect(body.own.map(({ fromDay, untilDay }: Record<string, unknown>) => [fromDay, untilDay])).toEqual([
      ['2026-04-01', null], ['2026-03-01', '2026-04-01'], ['2026-01-01', '2026-03-01'], ['2025-11-01', '2026-01-01'],
    ]);
  });

  test('sent twice are one; a second one of a day, an id of another and a slip are refused', async () => {
    expect(await desk.post(`places/${at.bench}/regimes`, told)).toMatchObject({ status: 201, body: { untilDay: '2026-03-01' } });
    const of = (more: object) => desk.post(`places/${at.bench}/regimes`, { ...told, id: newId(), fromDay: '2025-12-01', ...more });
    expect(typeOf(await of({ id: told.id, heatC: 25 }))).toBe('/problems/record/id-reused');
    expect(typeOf(await of({ fromDay: told.fromDay }))).toBe('/problems/regime/day-taken');
    for (const slip of [{ lightHours: 0 }, { lightHours: 25 }, { heatC: 60 }, { fromDay: '2026-02-30' }, { air: 'fan' }]) expect(typeOf(await of(slip))).toBe('/problems/http/unfit-request');
    expect(typeOf(await desk.post(`places/${newId()}/regimes`, { ...told, id: newId() }))).toBe('/problems/record/unknown');
    expect((await volunteer.get(`places/${at.bench}/regimes`)).body.own).toHaveLength(4);
  });

  test('are mended by whoever saw the last version', async () => {
    const { id: _, ...content } = told;
    const { etag } = await desk.get(`regimes/${told.id}`);
    expect(typeOf(await desk.put(`regimes/${told.id}`, { ...content, heatC: 19 }))).toBe('/problems/http/version-needed');
    expect(await desk.put(`regimes/${told.id}`, { ...content, heatC: 19 }, etag)).toMatchObject({ status: 200, body: { heatC: 19 } });
    expect(typeOf(await desk.put(`regimes/${told.id}`, { ...content, heatC: 30 }, etag))).toBe('/problems/http/version-stale');
    const { etag: last } = await desk.get(`regimes/${told.id}`);
    expect(typeOf(await desk.put(`regimes/${told.id}`, { ...content, fromDay: later.fromDay }, last))).toBe('/problems/regime/day-taken');
  });

  test('are made by the desk alone, and stay in their programme', async () => {
    const of = (who: Asker) => who.post(`places/${at.bench}/regimes`, { ...told, id: newId(), fromDay: '2025-08-01' });
    expect((await of(volunteer)).status).toBe(403);
    expect((await of(partner)).status).toBe(403);
    expect(typeOf(await of(outside))).toBe('/problems/record/unknown');
    expect((await partner.get(`places/${at.bench}/regimes`)).status).toBe(403);
    expect(typeOf(await outside.get(`places/${at.bench}/regimes`))).toBe('/problems/record/unknown');
    expect(typeOf(await outside.get(`regimes/${told.id}`))).toBe('/problems/record/unknown');
  });
});

describe('climate', () => {
  const reading = (more: object = {}) => ({ id: newId(), placeId: at.bench, takenAt: '2026-03-08T08:00:00Z', temperatureC: 17.25, humidityPercent: 80, ...more });
  const send = async (who: Asker, ...readings: object[]) => {
    const { status, body } = await who.post('climate', { readings });
    return status === 200 ? body.readings.map((one: { status: string; problem?: { type: string } }) => one.problem?.type ?? one.status) : body.type;
  };
  const days = async (query = '') => (await volunteer.get(`places/${at.bench}/climate${query}`)).body.days;
  const morning = reading();

  test('is told by anybody, many at once, each answered for itself', async () => {
    const night = reading({ takenAt: '2026-03-08T23:30:00+01:00', temperatureC: 12.75, humidityPercent: null });
    expect(await send(volunteer, morning, night, reading({ takenAt: '2026-03-10T12:20:00Z' }), reading({ placeId: there.bench }), reading({ temperatureC: 3 }))).toEqual([
      'written', 'written', '/problems/climate/moment-in-future', '/problems/record/no-such-place', '/problems/climate/moment-taken',
    ]);
    expect(await days()).toEqual([{ day: '2026-03-08', readings: 2, temperatureC: { lowest: 12.75, mean: 15, highest: 17.25 }, humidityPercent: { lowest: 80, mean: 80, highest: 80 } }]);
  });

  test('sent again is written once, also with an id of its own; an id of another is refused', async () => {
    expect(await send(desk, morning, { ...morning, id: newId() }, { ...morning, temperatureC: 3 })).toEqual(['already', 'already', '/problems/record/id-reused']);
    expect(await days()).toMatchObject([{ readings: 2 }]);
  });

  test('that comes late stands on its day, and the last thirty days are shown', async () => {
    expect(await send(volunteer, reading({ takenAt: '2026-01-15T08:00:00Z', temperatureC: 4 }))).toEqual(['written']);
    expect(await days()).toHaveLength(1);
    expect(await days('?from=2026-01-01')).toMatchObject([{ day: '2026-01-15', temperatureC: { mean: 4 } }, { day: '2026-03-08' }]);
    expect(await days('?from=2026-01-01&until=2026-01-14')).toEqual([]);
    expect(typeOf(await volunteer.get(`places/${at.bench}/climate?from=2026-02-01&until=2026-01-01`))).toBe('/problems/http/unfit-request');
  });

  test('that is wrong is set aside by the desk with a reason, stays readable, and makes room for the right one', async () => {
    const reason = { reason: 'the logger lay in the sun' };
    expect((await volunteer.post(`climate/${morning.id}/setting-aside`, reason)).status).toBe(403);
    const setAside = async (who: Desk, id: string, why = reason) => (await who.api.app.inject({ method: 'POST', url: `/api/v1/programmes/${who.nursery.programme}/climate/${id}/setting-aside`, headers: who.headers, payload: why })).statusCode;
    expect(await setAside(new Desk(api, there), morning.id)).toBe(404);
    expect(await setAside(ledger, morning.id)).toBe(204);
    expect(await setAside(ledger, morning.id, { reason: 'again' })).toBe(204);
    const { body } = await volunteer.get(`places/${at.bench}/climate`);
    expect(body.days).toMatchObject([{ readings: 1, temperatureC: { highest: 12.75 }, humidityPercent: null }]);
    expect(body.latest.find(({ id }: { id: string }) => id === morning.id)).toMatchObject({ setAside: reason.reason, toldBy: at.volunteer.name });
    expect(await send(volunteer, morning, reading({ temperatureC: 15 }))).toEqual(['already', 'written']);
  });

  test('that says nothing is refused, and nobody else reads or writes it', async () => {
    for (const slip of [{ temperatureC: null, humidityPercent: null }, { temperatureC: -80 }, { humidityPercent: 101 }, { takenAt: '2026-03-08' }]) expect(await send(volunteer, reading(slip))).toBe('/problems/http/unfit-request');
    expect(await send(volunteer)).toBe('/problems/http/unfit-request');
    expect(await send(partner, reading())).toBe('/problems/http/not-allowed');
    expect(await send(outside, reading())).toEqual(['/problems/record/no-such-place']);
    expect(typeOf(await outside.get(`places/${at.bench}/climate`))).toBe('/problems/record/unknown');
    const table = await api.app.inject({ url: `/api/v1/programmes/harrowdale/places/${at.bench}/climate.csv`, headers: at.volunteer.headers });
    expect(table.body.trimEnd().split('\r\n')).toHaveLength(4);
    expect(table.body).toContain('the logger lay in the sun');
  });
});

describe('incidents', () => {
  const list = async (query = '', who = volunteer) => (await who.get(`incidents${query}`)).body;
  const days = async (query: string) => (await list(query)).map(({ from, until }: Record<string, unknown>) => [from, until]);
  const failed = ledger.entry('2026-02-10', { kind: 'incident', placeId: at.bench, what: 'timerFailed', severity: 'serious', lastGoodOn: '2026-02-08', untilDay: '2026-02-11', detail: 'stuck' });

  test('show at the place, in what lies in it, and on every batch that stood there then', async () => {
    const [stood, came] = [await ledger.stick(10, { label: 'I-1' }), await ledger.stick(10, { label: 'I-2', bundleId: at.bundles[1], placeId: second }, '2026-02-20')];
    await ledger.write([failed]);
    for (const query of ['', `?placeId=${first}`, `?batchId=${stood.batchId}`, '?state=over', '?from=2026-02-11&until=2026-02-11']) expect(await days(query)).toEqual([['2026-02-08', '2026-02-11']]);
    for (const query of [`?batchId=${came.batchId}`, `?placeId=${at.plot}`, '?state=open', '?from=2026-02-12', '?until=2026-02-07']) expect(await days(query)).toEqual([]);
    expect(await list()).toMatchObject([{ entryId: failed.id, placeName: 'Bench A', what: 'timerFailed', severity: 'serious', detail: 'stuck', writtenBy: at.coordinator.name }]);
  });

  test('that nobody ended are over on the day on which a round saw it right', async () => {
    const lamp = ledger.entry('2026-03-01', { kind: 'incident', placeId: first, what: 'lightsOff', severity: 'slight' });
    expect(await ledger.as(at.volunteer).write([lamp, lamp])).toMatchObject([{ status: 'written' }, { status: 'already' }]);
    expect(await list('?state=open')).toMatchObject([{ entryId: lamp.id, until: null, endSeen: false, mayMend: true }]);
    await ledger.write([ledger.entry('2026-03-04', { kind: 'noted', placeId: first, conditions: { lights: 'yes' } })], { door: 'outbox' });
    expect(await list('?state=open')).toEqual([]);
    expect((await volunteer.get(`incidents/${lamp.id}`)).body).toMatchObject({ from: '2026-03-01', until: '2026-03-04', endSeen: true });
    // Somebody’s phone finds its signal late: it had been right a day before.
    await ledger.as(at.volunteer).write([ledger.entry('2026-03-03', { kind: 'noted', placeId: first, conditions: { lights: 'yes' } })], { door: 'outbox' });
    expect((await volunteer.get(`incidents/${lamp.id}`)).body.until).toBe('2026-03-03');
  });

  test('are mended and withdrawn as entries, by themselves until a day has gone, by the desk always', async () => {
    const frost = ledger.entry('2026-03-09', { kind: 'incident', placeId: at.house, what: 'frost', severity: 'severe' });
    await ledger.as(at.volunteer).write([frost]);
    const { latestVersionId: sawVersion } = (await volunteer.get(`incidents/${frost.id}`)).body;
    const mended = ledger.entry('2026-03-10', { kind: 'replaced', entryId: frost.id, sawVersion, reason: 'a slip', instead: { observedOn: '2026-03-08', saying: { ...frost.saying, severity: 'slight', untilDay: '2026-03-08' } } });
    expect(await ledger.as(at.volunteer).write([mended])).toMatchObject([{ status: 'written' }]);
    expect((await volunteer.get(`incidents/${frost.id}`)).body).toMatchObject({ from: '2026-03-08', until: '2026-03-08', severity: 'slight', latestVersionId: mended.id, mayMend: true });
    now = new Date('2026-03-12T12:00:00Z');
    expect((await volunteer.get(`incidents/${frost.id}`)).body.mayMend).toBe(false);
    await ledger.write([ledger.entry('2026-03-12', { kind: 'withdrawn', entryId: frost.id, sawVersion: mended.id, reason: 'another house' })]);
    expect(typeOf(await volunteer.get(`incidents/${frost.id}`))).toBe('/problems/incident/unknown');
  });

  test('of nowhere, with days turned round, or of another programme are refused', async () => {
    expect(typeOf(await volunteer.get('incidents?from=2026-03-02&until=2026-03-01'))).toBe('/problems/http/unfit-request');
    expect(typeOf(await volunteer.get(`incidents?placeId=${there.bench}`))).toBe('/problems/record/unknown');
    expect(typeOf(await volunteer.get(`incidents?batchId=${newId()}`))).toBe('/problems/batch/unknown');
    expect(typeOf(await outside.get(`incidents/${failed.id}`))).toBe('/problems/incident/unknown');
    expect(await list('', outside)).toEqual([]);
    expect((await partner.get('incidents')).status).toBe(403);
    const turned = ledger.entry('2026-03-01', { ...failed.saying, lastGoodOn: '2026-03-02', untilDay: '2026-03-01' });
    expect((await ledger.post('entries', { entries: [turned] })).status).toBe(422);
  });
});

describe('treatments', () => {
  const list = async (query = '', who = volunteer) => (await who.get(`treatments${query}`)).body.treatments;
  const spray = { kind: 'treated', what: 'spray', product: 'Potash soap', registration: 'not known', rate: '10 ml a litre', appliedBy: 'A. Moss', reentryHours: 4 };

  test('tell the place and the batch as it stood on the day, however late they are written', async () => {
    const { batchId } = await ledger.stick(10, { label: 'S-1', placeId: at.trays[2] });
    await ledger.write([ledger.entry('2026-02-20', { kind: 'moved', batchId, placeId: at.plot })]);
    const [onBatch, onBench] = [ledger.entry('2026-02-01', { ...spray, batchId }, { minute: 545, note: 'leaves wet' }), ledger.entry('2026-02-02', { kind: 'treated', what: 'water', placeId: at.bench })];
    expect(await ledger.as(at.volunteer).write([onBench, onBatch, onBatch])).toMatchObject([{ status: 'written' }, { status: 'written' }, { status: 'already' }]);
    expect(await list(`?placeId=${at.bench}`)).toMatchObject([
      { entryId: onBatch.id, observedOn: '2026-02-01', minute: 545, what: 'spray', place: { name: 'T3', path: ['House 1', 'Bench A'] }, batch: { label: 'S-1' }, registration: 'not known', reentryHours: 4, note: 'leaves wet', writtenBy: at.volunteer.name },
      { entryId: onBench.id, what: 'water', place: { name: 'Bench A' }, batch: null, product: null },
    ]);
    expect(await list('?what=water')).toHaveLength(1);
    expect(await list(`?placeId=${at.site}`)).toEqual([]);
  });

  test('stand under the day that a correction puts instead, and go when they are withdrawn', async () => {
    const [wrongDay, wrong] = [ledger.entry('2026-03-01', { ...spray, placeId: first }), ledger.entry('2026-03-02', { ...spray, placeId: first })];
    await ledger.write([wrongDay, wrong]);
    await ledger.write([
      ledger.entry('2026-03-12', { kind: 'replaced', entryId: wrongDay.id, sawVersion: wrongDay.id, reason: 'a day before', instead: { observedOn: '2026-02-28', saying: wrongDay.saying } }),
      ledger.entry('2026-03-12', { kind: 'withdrawn', entryId: wrong.id, sawVersion: wrong.id, reason: 'it rained' }),
    ]);
    expect(await list('?from=2026-03-01')).toEqual([]);
    expect(await list('?from=2026-02-28&until=2026-02-28')).toMatchObject([{ entryId: wrongDay.id, observedOn: '2026-02-28' }]);
  });

  test('of a spray say what whoever goes in next must know, and stay in their programme', async () => {
    for (const left of ['product', 'registration', 'rate', 'appliedBy', 'reentryHours']) {
      const { status, body } = await ledger.post('entries', { entries: [ledger.entry('2026-03-01', { ...spray, placeId: first, [left]: undefined })] });
      expect(status).toBe(422);
      expect(JSON.stringify(body.errors)).toContain(left);
    }
    expect(typeOf(await volunteer.get('treatments?from=2026-03-02&until=2026-03-01'))).toBe('/problems/http/unfit-request');
    expect(await list('', outside)).toEqual([]);
    expect((await partner.get('treatments')).status).toBe(403);
    const table = await api.app.inject({ url: '/api/v1/programmes/harrowdale/treatments.csv?what=spray', headers: at.volunteer.headers });
    expect(table.body.trimEnd().split('\r\n').slice(1).map((line) => line.slice(0, 16))).toEqual(['2026-02-01,09:05', '2026-02-28,,spra']);
  });
});

import { beforeAll, expect, test } from 'vitest';
import { testApi } from '../../../../test/support/api.ts';
import { Desk, nursery } from '../../../../test/support/nursery.ts';
import { newId } from '../../../../test/support/people.ts';

const api = await testApi();
const place = await nursery(api);
const desk = new Desk(api, place);
const young = newId();
let tray: { batchId: string; stickingId: string; entryId: string };
let died: { id: string };

beforeAll(async () => {
  tray = await desk.stick(60, { label: 'CR-1/25', rows: '3-5' });
  died = desk.entry('2026-01-10', { kind: 'died', batchId: tray.batchId, n: 6, cause: 'dry', certainty: 'likely' }, { note: 'at the heater', seenBy: place.volunteer.personId });
  await desk.write([
    died,
    desk.entry('2026-01-09', { kind: 'incident', placeId: place.house, what: 'heatOff', severity: 'slight', lastGoodOn: '2026-01-07', untilDay: '2026-01-09' }),
    desk.entry('2026-02-01', { kind: 'counted', batchId: tray.batchId, alive: 53, look: 'tug', rooted: 20 }),
    desk.entry('2026-03-01', { kind: 'lifted', batchId: tray.batchId, toBatchId: young, n: 20, placeId: place.trays[1], label: 'L-1' }),
    desk.entry('2026-09-01', { kind: 'planted', batchId: young, toBatchId: newId(), n: 5, placeId: place.plot }),
  ]);
  await desk.write([desk.entry('2026-01-10', {
    kind: 'replaced', entryId: died.id, sawVersion: died.id, reason: 'counted one twice',
    instead: { observedOn: '2026-01-10', saying: { kind: 'died', batchId: tray.batchId, n: 5, cause: 'dry' } },
  })], { confirm: [] });
});

test('a batch page tells where it comes from, what came of it, and what happened to it', async () => {
  const { status, body } = await desk.get(`batches/${tray.batchId}`);

  expect(status).toBe(200);
  expect(body).toMatchObject({
    label: 'CR-1/25', stage: 'cutting', balance: 33, donorTree: { label: 'CR-1' }, stand: { name: 'Corran Ridge' }, place: { name: 'T1' },
    line: {
      stand: { name: 'Corran Ridge' }, donorTree: { id: place.donors[0] }, trip: { wentOn: '2025-10-01' }, bundle: { cuttings: 200 },
      sticking: { id: tray.stickingId, generation: 1, recipe: { name: 'Heel, talc', version: 1 } }, ancestors: [], children: [{ id: young, label: 'L-1', balance: 15 }],
    },
    stays: [{ place: { name: 'T1' }, from: '2025-10-02', until: null, incidents: [{ what: 'heatOff', from: '2026-01-07', until: '2026-01-09', placeName: 'House 1' }] }],
  });
  expect(body.history.map(({ kind }: { kind: string }) => kind)).toEqual(['stuck', 'died', 'counted', 'lifted']);
  expect(body.history[1]).toMatchObject({
    id: died.id, said: { n: 6 }, now: { said: { n: 5 } }, note: 'at the heater', seenBy: place.volunteer.name, writtenBy: place.coordinator.name,
    corrections: [{ kind: 'replaced', reason: 'counted one twice', isEffective: true }], movements: [{ effect: 'died', n: 5, cause: 'dry' }], mayMend: true,
  });
  expect(body.history[1].latestVersionId).toBe(body.history[1].corrections[0].id);
  expect(body.history[2].movements).toMatchObject([{ effect: 'unaccounted', n: 2 }]);
});

test('a later batch leads back to the wild tree through those it came from', async () => {
  const { body } = await desk.get(`batches/${young}`);
  expect(body.line).toMatchObject({ donorTree: { label: 'CR-1' }, ancestors: [{ id: tray.batchId, label: 'CR-1/25' }], children: [{ stage: 'planted', balance: 5 }] });
});

test('a label leads to its batch, whatever the size of its letters', async () => {
  expect((await desk.get('labels/l-1')).body).toMatchObject({ code: 'L-1', is: 'batch', id: young });
  expect((await desk.get('labels/nobody')).status).toBe(404);
});

test('lists go by place with all that lies in it, by donor tree, by stage, and in parts', async () => {
  const ids = async (query: string) => (await desk.get(`batches?${query}`)).body.map(({ id }: { id: string }) => id);
  expect(await ids(`placeId=${place.house}&state=alive`)).toEqual([young, tray.batchId]);
  expect(await ids(`donorTreeId=${place.donors[1]}`)).toEqual([]);
  expect(await ids(`standId=${place.standId}&stage=liner`)).toEqual([young]);

  const first = await desk.get('batches?limit=2');
  const next = /<\/api\/v1\/programmes\/harrowdale\/(.+)>; rel="next"/.exec(String(first.headers['link']))?.[1] ?? '';
  expect([...first.body, ...(await desk.get(next)).body].map(({ stage }: { stage: string }) => stage)).toEqual(['planted', 'liner', 'cutting']);
});

test('a round walks the trays of a bench in order, each with what was counted last', async () => {
  const { body } = await desk.get(`places/${place.bench}/round`);
  expect(body).toMatchObject({
    place: { name: 'Bench A' },
    stops: [
      { place: { name: 'T1' }, path: ['Bench A'], batches: [{ id: tray.batchId, rows: '3-5', lastCount: { day: '2026-02-01', alive: 53, rooted: 20, look: 'tug' } }] },
      { place: { name: 'T2' }, batches: [{ id: young, lastCount: null }] },
    ],
  });
});

test('all that came of a donor tree is one step away', async () => {
  const { body } = await desk.get(`donor-trees/${place.donors[0]}/descent`);
  expect(body).toMatchObject({
    donorTree: { label: 'CR-1', stand: { name: 'Corran Ridge' } },
    stickings: [{ id: tray.stickingId, opened: 60, batches: [{ id: tray.batchId }, { id: young }, { stage: 'planted' }] }],
    plantsByStage: { cutting: 33, liner: 15, planted: 5 },
    sites: [{ place: { id: place.site, name: 'Lowmire Wood' }, plants: 5 }],
    mixtures: [],
  });
});

test('a flag stays on the review list until it is accepted', async () => {
  const found = desk.entry('2026-10-01', { kind: 'found', batchId: young, n: 2, reason: 'behind the bench' });
  const early = desk.entry('2026-10-02', { kind: 'died', batchId: newId(), n: 1, cause: 'dry' });
  await desk.write([found, early], { door: 'outbox' });
  const list = async () => (await desk.get('review')).body as { entryId: string; code: string; decisions: object[] }[];
  expect(await list()).toMatchObject([
    { entryId: found.id, code: 'found-told', n: 2, batch: { id: young, label: 'L-1' } },
    { entryId: early.id, code: 'waiting', batch: null, waitsFor: [early.saying['batchId']] },
  ]);

  const review = { id: newId(), entryId: found.id, batchId: young, code: 'found-told', decision: 'assigned', assignedTo: place.volunteer.personId };
  expect((await desk.api.app.inject({ method: 'POST', url: '/api/v1/programmes/harrowdale/review', headers: desk.headers, payload: review })).statusCode).toBe(204);
  expect((await list())[0]).toMatchObject({ decisions: [{ decision: 'assigned', assignedTo: place.volunteer.name }] });

  const accepted = { id: newId(), entryId: found.id, batchId: young, code: 'found-told', decision: 'accepted' };
  const post = (payload: object) => desk.api.app.inject({ method: 'POST', url: '/api/v1/programmes/harrowdale/review', headers: desk.headers, payload });
  expect([(await post(accepted)).statusCode, (await post(accepted)).statusCode, (await post({ ...accepted, decision: 'mended' })).statusCode]).toEqual([204, 204, 422]);
  expect((await list()).map(({ entryId }) => entryId)).toEqual([early.id]);
});

import { expect, test } from 'vitest';
import { testApi } from '../../../../test/support/api.ts';
import { Asker } from '../../../../test/support/build.ts';
import { Desk, nursery } from '../../../../test/support/nursery.ts';
import { newId, signedIn } from '../../../../test/support/people.ts';

const api = await testApi();
const at = await nursery(api);
const desk = new Desk(api, at);
const ask = new Asker(api, at.coordinator.headers);
const volunteer = new Asker(api, at.volunteer.headers);

/** A potted batch of a donor tree on a tray. */
async function potted(n: number, donor: 0 | 1, tray: 0 | 1 | 2, label: string): Promise<string> {
  const { batchId } = await desk.stick(n, { bundleId: at.bundles[donor], placeId: at.trays[tray] });
  const toBatchId = newId();
  await desk.write([desk.entry('2026-02-01', { kind: 'potted', batchId, n, toBatchId, placeId: at.trays[tray], label, container: '9 cm pot', leavesNone: true })]);
  return toBatchId;
}

const wish = (more: object = {}) => ({ id: newId(), outside: 'Winterbeck Rangers', taxonId: at.taxonId, stage: 'potted', plants: 10, askedOn: '2026-02-10', ...more });
const made = async (more: object = {}) => (await ask.post('requests', wish(more))).body;
const aside = async (id: string, lines: object[]) => ask.put(`requests/${id}/reservations`, { lines }, (await ask.get(`requests/${id}`)).etag);
const balance = async (batchId: string): Promise<number> => (await ask.get(`batches/${batchId}`)).body.balance;
const line = (batchId: string, n: number, more: object = {}) => ({ entryId: newId(), batchId, n, toBatchId: newId(), ...more });

// CR-1 has 20 on the first tray and 4 on the second, CR-2 has 6 on the second.
const [first, second, other] = [await potted(20, 0, 0, 'P1'), await potted(4, 0, 1, 'P2'), await potted(6, 1, 1, 'P3')];

test('a request is made once, by a partner or by somebody outside', async () => {
  const request = wish({ standIds: [at.standId], mostPerDonor: 5, wantedOn: '2026-03-01' });
  const answer = await ask.post('requests', request);

  expect(answer).toMatchObject({ status: 201, body: { ...request, partnerId: null, state: 'asked', goneOn: null, setAside: [] } });
  expect((await ask.post('requests', request)).body).toEqual(answer.body);
  expect((await ask.post('requests', { ...request, plants: 11 })).body.type).toBe('/problems/record/id-reused');
  expect((await ask.post('requests', wish({ partnerId: at.partnerId }))).body.errors[0].pointer).toBe('#/outside');
  expect((await ask.post('requests', wish({ taxonId: newId() }))).body.type).toBe('/problems/record/no-such-taxon');
  expect((await ask.post('requests', wish({ standIds: [newId()] }))).body.type).toBe('/problems/record/no-such-stand');
  expect((await ask.post('requests', wish({ placeId: at.trays[0] }))).body.type).toBe('/problems/request/not-a-site');
  expect((await ask.post('requests', wish({ stage: 'planted' }))).status).toBe(422);
  expect((await volunteer.post('requests', wish())).status).toBe(403);
  expect((await volunteer.get('requests')).body.map(({ id }: { id: string }) => id)).toContain(request.id);
  const { id: _, ...content } = request;
  expect((await ask.put(`requests/${request.id}`, { ...content, plants: 12 }, '"old"')).status).toBe(412);
  expect((await ask.put(`requests/${request.id}`, { ...content, plants: 12, standIds: [] }, answer.etag)).body).toMatchObject({ plants: 12, standIds: [] });
});

test('the pick spreads over donor trees in walking order, and says what is short', async () => {
  const request = await made({ plants: 14, mostPerDonor: 8 });
  const { body } = await volunteer.get(`requests/${request.id}/plants`);

  expect(body.pick).toEqual({ plants: 14, short: 0, donors: 2, stops: 2, isShortestProven: true });
  expect(body.donorsThere).toBe(2);
  expect(body.supplies.map(({ label, path, proposed, free }: { label: string; path: string[]; proposed: number; free: number }) => [label, path.at(-1), free, proposed])).toEqual([
    ['P1', 'T1', 20, 8], ['P2', 'T2', 4, 0], ['P3', 'T2', 6, 6],
  ]);
  const many = await made({ plants: 40 });
  expect((await ask.get(`requests/${many.id}/plants`)).body.pick).toMatchObject({ plants: 30, short: 10 });
});

test('no plant is promised twice, also when two set plants aside at once', async () => {
  const [one, two] = [await made({ askedOn: '2026-02-11' }), await made({ askedOn: '2026-02-12' })];
  expect((await aside(one.id, [{ batchId: other, n: 7 }])).body).toMatchObject({ type: '/problems/request/more-than-free', facts: { free: 6, asked: 7 } });

  const answers = await Promise.all([aside(one.id, [{ batchId: other, n: 4 }]), aside(two.id, [{ batchId: other, n: 4 }])]);
  expect(answers.map(({ status }) => status).sort()).toEqual([200, 409]);
  const [winner, loser] = answers[0]?.status === 200 ? [one, two] : [two, one];
  expect((await aside(loser.id, [{ batchId: other, n: 2 }])).status).toBe(200);
  const said = (await volunteer.get(`batches/${other}`)).body.setAside;
  expect(said).toEqual([one, two].map(({ id }) => ({ requestId: id, who: 'Winterbeck Rangers', n: id === winner.id ? 4 : 2 })));
  expect((await aside(loser.id, [{ batchId: newId(), n: 1 }])).body.type).toBe('/problems/request/does-not-fit');
  expect((await ask.put(`requests/${loser.id}/reservations`, { lines: [] }, '"old"')).status).toBe(412);

  const { etag, body } = await ask.get(`requests/${winner.id}`);
  const { id: _, state: __, goneOn: ___, setAside: ____, ...content } = body;
  expect((await ask.put(`requests/${winner.id}`, { ...content, stage: 'liner' }, etag)).body.type).toBe('/problems/request/plants-set-aside');
  for (const { id } of [one, two]) await aside(id, []);
});

test('when plants die, who asked first is served first and the others are shown as short', async () => {
  const [early, late] = [await made({ askedOn: '2026-02-01' }), await made({ askedOn: '2026-02-05' })];
  await aside(late.id, [{ batchId: second, n: 2 }]);
  await aside(early.id, [{ batchId: second, n: 2 }]);
  await desk.write([desk.entry('2026-02-15', { kind: 'died', batchId: second, n: 1, cause: 'dry' })]);

  const list = (await ask.get('requests?open=yes')).body as { id: string; reserved: number; covered: number }[];
  expect(list.find(({ id }) => id === early.id)).toMatchObject({ reserved: 2, covered: 2 });
  expect(list.find(({ id }) => id === late.id)).toMatchObject({ reserved: 2, covered: 1 });
  expect((await ask.post(`requests/${late.id}/despatch`, { observedOn: '2026-02-16', lines: [line(second, 2)] })).body).toMatchObject({ type: '/problems/request/more-than-free', facts: { free: 1 } });
  expect(await balance(second)).toBe(3);
  for (const { id } of [early, late]) await aside(id, []);
});

test('a despatch to somebody outside takes the plants out of the books once, and the note tells their family', async () => {
  const request = await made({ plants: 5 });
  await aside(request.id, [{ batchId: first, n: 3 }, { batchId: other, n: 2 }]);
  const despatch = { observedOn: '2026-02-20', lines: [line(first, 3), line(other, 2)] };
  expect((await volunteer.post(`requests/${request.id}/despatch`, despatch)).status).toBe(403);
  expect((await ask.get(`requests/${request.id}/despatch`)).status).toBe(404);
  const note = await ask.post(`requests/${request.id}/despatch`, despatch);

  expect(note).toMatchObject({
    status: 200,
    body: {
      to: 'Winterbeck Rangers', goneOn: '2026-02-20', plants: 5, donorTrees: 2, asked: 5, place: null, taxon: 'Juniperus communis',
      lines: [
        { label: 'P1', n: 3, donorTree: { label: 'CR-1' }, stand: { name: 'Corran Ridge' }, container: '9 cm pot', stuckOn: '2025-10-02', toBatch: null },
        { label: 'P3', n: 2, donorTree: { label: 'CR-2' } },
      ],
    },
  });
  expect((await ask.post(`requests/${request.id}/despatch`, despatch)).body).toEqual(note.body);
  expect((await ask.post(`requests/${request.id}/despatch`, { ...despatch, lines: [line(first, 1)] })).body.type).toBe('/problems/request/gone-already');
  expect([await balance(first), await balance(other)]).toEqual([17, 4]);
  expect((await ask.get(`requests/${request.id}`)).body).toMatchObject({ state: 'gone', goneOn: '2026-02-20', setAside: [] });
  const over = (await ask.get(`requests/${request.id}/plants`)).body;
  expect([over.pick.plants, over.pick.short, over.supplies.some(({ proposed }: { proposed: number }) => proposed > 0)]).toEqual([0, 0, false]);
  const csv = await api.app.inject({ method: 'GET', url: `/api/v1/programmes/harrowdale/requests/${request.id}/despatch.csv`, headers: at.volunteer.headers });
  expect(csv.payload).toContain('P1,Juniperus communis,potted,3,CR-1,Corran Ridge,2025-10-02,9 cm pot,,2026-02-20,Winterbeck Rangers,');

  // Taken back in the books, it is taken back on the note too.
  const { entryId } = despatch.lines[1]!;
  await desk.write([desk.entry('2026-02-21', { kind: 'withdrawn', entryId, sawVersion: entryId, reason: 'they stayed' })]);
  expect((await ask.get(`requests/${request.id}/despatch`)).body).toMatchObject({ plants: 3, donorTrees: 1 });
});

test('a partner’s plants arrive unconfirmed at their place, and plants for a site are planted there', async () => {
  const toPartner = await made({ outside: null, partnerId: at.partnerId, plants: 2 });
  const theirs = line(first, 2, { label: 'TS1' });
  expect((await ask.post(`requests/${toPartner.id}/despatch`, { observedOn: '2026-02-22', lines: [theirs] })).body.type).toBe('/problems/request/partner-place-needed');
  const held = (await ask.post('places', { id: newId(), kind: 'partner', name: 'School garden', partnerId: at.partnerId })).body;
  const note = await ask.post(`requests/${toPartner.id}/despatch`, { observedOn: '2026-02-22', placeId: held.id, lines: [theirs] });
  expect(note.body).toMatchObject({ to: 'Thornber School', place: 'School garden', lines: [{ toBatch: { id: theirs.toBatchId, label: 'TS1' } }] });
  expect((await ask.get(`batches/${theirs.toBatchId}`)).body).toMatchObject({ balance: 2, unconfirmed: true });

  const toSite = await made({ placeId: at.plot, plants: 3 });
  const planted = line(first, 3);
  expect((await ask.post(`requests/${toSite.id}/despatch`, { observedOn: '2026-02-23', lines: [planted] })).body).toMatchObject({ place: 'Lowmire Wood › P1', plants: 3 });
  expect((await ask.get(`batches/${planted.toBatchId}`)).body).toMatchObject({ stage: 'planted', balance: 3 });
});

test('all of it goes or nothing: held plants keep the whole despatch back', async () => {
  const request = await made({ plants: 2 });
  await desk.write([desk.entry('2026-02-24', { kind: 'held', batchId: other, reason: 'brown roots' })]);
  const before = await balance(first);

  expect((await ask.post(`requests/${request.id}/despatch`, { observedOn: '2026-02-25', lines: [line(first, 1), line(other, 1)] })).body.type).toBe('/problems/batch/held');
  expect(await balance(first)).toBe(before);
  expect((await ask.get(`requests/${request.id}/plants`)).body.pick.donors).toBe(1);
  await desk.write([desk.entry('2026-02-26', { kind: 'released', batchId: other, reason: 'clean' })]);
});

test('a request is promised, packed and withdrawn; what was set aside is free again', async () => {
  const request = await made();
  const state = async (to: string) => ask.put(`requests/${request.id}/state`, { state: to }, (await ask.get(`requests/${request.id}`)).etag);

  expect((await state('promised')).body.state).toBe('promised');
  expect((await state('packed')).body.type).toBe('/problems/request/nothing-set-aside');
  await aside(request.id, [{ batchId: first, n: 1 }]);
  expect((await state('packed')).body.state).toBe('packed');
  expect((await state('withdrawn')).body).toMatchObject({ state: 'withdrawn', setAside: [] });
  expect((await aside(request.id, [{ batchId: first, n: 1 }])).body.type).toBe('/problems/request/withdrawn');
  expect((await state('gone')).status).toBe(422);
  expect((await ask.get('requests?open=no')).body.map(({ id }: { id: string }) => id)).toContain(request.id);
});

test('what is given back for a permission is counted from the books', async () => {
  const permission = (await ask.post('permissions', { id: newId(), grantedBy: 'Harrowdale Commoners', land: 'Corran Ridge', validFrom: '2025-01-01', plantsOwedBack: 4, taxonIds: [at.taxonId] })).body;
  const request = await made({ plants: 2, permissionId: permission.id });
  await ask.post(`requests/${request.id}/despatch`, { observedOn: '2026-02-27', lines: [line(first, 2)] });

  expect((await ask.get(`permissions/${permission.id}`)).body).toMatchObject({ plantsOwedBack: 4, givenBack: 2, taxonIds: [at.taxonId] });
});

test('a partner and another programme see nothing of it', async () => {
  const partner = new Asker(api, await signedIn(api, 'partner'));
  const stranger = new Asker(api, await signedIn(api, 'coordinator', 'winterbeck'), 'winterbeck');
  const request = await made();

  expect((await partner.get('requests')).status).toBe(403);
  expect((await stranger.get(`requests/${request.id}`)).status).toBe(404);
  expect((await stranger.get(`requests/${request.id}/plants`)).status).toBe(404);
});

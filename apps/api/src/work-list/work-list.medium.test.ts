import type { TypedLineAnswer, WorkList } from '@sprigline/contract';
import { beforeAll, expect, test } from 'vitest';
import { testApi } from '../../../../test/support/api.ts';
import { Desk, nursery } from '../../../../test/support/nursery.ts';
import { asOwner, member, newId } from '../../../../test/support/people.ts';

const api = await testApi({ presentTime: () => new Date('2026-11-25T12:00:00Z') });
const place = await nursery(api);
const desk = new Desk(api, place);
const volunteer = desk.as(place.volunteer);
const [T1, T2] = place.trays;

/** By label. */
const batches = new Map<string, string>();
const id = (label: string): string => batches.get(label) ?? '';

const make = async (kind: string, asked: object = {}, who = desk) => who.post('work-lists', { id: newId(), kind, asked });
const labels = ({ lines }: WorkList) => lines.map(({ number, batch }) => `${number} ${batch.label}`);
const numberOf = ({ lines }: WorkList, label: string) => lines.find(({ batch }) => batch.label === label)?.number ?? 0;

async function typeBack(list: WorkList, lines: object[], more: object = {}, who = volunteer): Promise<TypedLineAnswer[]> {
  const { status, body } = await who.post(`work-lists/${list.id}/typed`, { observedOn: '2026-11-20', writtenAt: '2026-11-21T18:00:00Z', lines, ...more });
  if (status !== 200) throw new Error(`typing back answered ${status}: ${JSON.stringify(body)}`);
  return body.lines;
}
const balance = async (label: string) => (await desk.get(`batches/${id(label)}`)).body.balance as number;

beforeAll(async () => {
  await asOwner(api, async (sql) => {
    for (const [at, tray] of [T2, T1, place.trays[2]].entries()) await sql.query('UPDATE place SET walk_order = $2 WHERE id = $1', [tray, at + 1]);
  });
  const stick = async (label: string, n: number, more: object, day: string) => batches.set(label, (await desk.stick(n, { label, ...more }, day)).batchId);
  await stick('J4', 40, { placeId: T1, rows: '10-12' }, '2025-10-02');
  await stick('J3', 30, { placeId: T1, rows: '2' }, '2025-10-02');
  await stick('J2', 20, { placeId: T2, rows: '1', bundleId: place.bundles[1] }, '2025-10-02');
  await stick('J1', 10, { placeId: T2 }, '2026-11-01');
  await desk.write([desk.entry('2026-05-01', { kind: 'counted', batchId: id('J3'), alive: 30, look: 'tug', rooted: 12 })]);
  batches.set('L1', newId());
  await desk.write([desk.entry('2026-06-01', { kind: 'lifted', batchId: id('J2'), toBatchId: id('L1'), n: 5, placeId: T2, rows: '3', label: 'L1', container: 'plug' })]);
});

test('a list goes in walking order, and lines are counted from one', async () => {
  const { status, body } = await make('calling', {});
  expect(status).toBe(201);
  // Tray 2 is walked past first; its row 1 before what has no row; row 2 before row 10. Stuck three weeks ago: not yet.
  expect(labels(body)).toEqual(['1 J2', '2 J3', '3 J4']);
  expect(body.lines[1]).toMatchObject({ path: ['House 1', 'Bench A', 'T1'], typed: null, batch: { balance: 30, rootedNow: 12, rootedOn: '2026-05-01', rows: '2', donorTree: { label: 'CR-1' } } });
});

test('what belongs on it is computed, and can be narrowed by place, stand, species, age and number', async () => {
  expect(labels((await make('pottingUp')).body)).toEqual(['1 L1', '2 J3']);
  expect(labels((await make('pottingUp', { placeId: T1 })).body)).toEqual(['1 J3']);
  expect(labels((await make('calling', { atMost: 15 })).body)).toEqual(['1 J2']);
  expect(labels((await make('rootCheck', { days: 10, placeId: T2, standId: place.standId, taxonId: place.taxonId })).body)).toEqual(['1 J2', '2 J1']);
  expect((await make('pottingUp', { standId: newId() })).body).toMatchObject({ type: '/problems/work-list/nothing-to-do', status: 409 });
  expect((await make('siteCheck')).body.type).toBe('/problems/work-list/nothing-to-do');
  // What the programme writes of a species holds, as for what is due.
  await asOwner(api, (sql) => sql.query('UPDATE taxon SET verdict_days = 420 WHERE id = $1', [place.taxonId]));
  expect((await make('calling')).body.type).toBe('/problems/work-list/nothing-to-do');
  await asOwner(api, (sql) => sql.query('UPDATE taxon SET verdict_days = NULL WHERE id = $1', [place.taxonId]));
});

test('a sheet stays as it was printed, is made once, and tells what the books say now', async () => {
  const sent = { id: newId(), kind: 'calling', asked: { placeId: T1 } };
  const made = await volunteer.post('work-lists', sent);
  await desk.write([desk.entry('2026-11-02', { kind: 'died', batchId: id('J4'), n: 1, cause: 'brown' })]);
  const again = await volunteer.post('work-lists', sent);

  expect(labels(again.body)).toEqual(labels(made.body));
  expect(again.body.lines[1].batch.balance).toBe(39);
  expect((await volunteer.post('work-lists', { ...sent, kind: 'rootCheck' })).body.type).toBe('/problems/record/id-reused');
  expect((await volunteer.get(`work-lists/${newId()}`)).status).toBe(404);
  const listed = (await volunteer.get('work-lists?limit=1')).body;
  expect(listed).toMatchObject([{ id: sent.id, lines: 2, typed: 0, madeBy: place.volunteer.personId, asked: { placeId: T1, standId: null } }]);
});

test('a sheet is typed back line by line: who refuses one keeps the others', async () => {
  const list = (await make('pottingUp')).body as WorkList;
  const [young, cuttings] = [numberOf(list, 'L1'), numberOf(list, 'J3')];
  const potted = { number: young, potted: 4, dead: [{ n: 1, cause: 'black base' }], placeId: place.bench, label: 'P1', container: '1 L pot' };
  const workday = (await desk.post('workdays', { id: newId(), day: '2026-11-20' })).body.id;
  const about = { workdayId: workday, seenBy: place.coordinator.personId };
  // Of 30 cuttings 31 died: the dead are not written either, since a line is written whole.
  const [first, second] = await typeBack(list, [potted, { number: cuttings, potted: 2, dead: [{ n: 31, cause: 'brown' }], placeId: place.bench, label: 'P2' }], about);

  expect(first).toEqual({ number: young, status: 'written', flags: [] });
  expect(second).toMatchObject({ number: cuttings, status: 'refused', problem: { type: '/problems/entry/needs-another-look' } });
  expect([await balance('L1'), await balance('J3')]).toEqual([0, 30]);
  const { history } = (await desk.get(`batches/${id('L1')}`)).body;
  const typed = history.filter(({ kind }: { kind: string }) => kind !== 'lifted');
  expect(typed).toMatchObject([{ kind: 'died', observedOn: '2026-11-20', seenBy: place.coordinator.name, writtenBy: place.volunteer.name }, { kind: 'potted' }]);
  const rows = await asOwner(api, (sql) => sql.query('SELECT workday_id, line FROM entry WHERE id = $1', [typed[0].id]));
  expect(rows.rows).toEqual([{ workday_id: workday, line: young }]);

  // Sent again after a lost answer, with the slip mended.
  const mended = { number: cuttings, potted: 2, placeId: place.bench, label: 'P2' };
  expect((await typeBack(list, [potted, mended], about)).map(({ status }) => status)).toEqual(['already', 'written']);
  expect([await balance('L1'), await balance('J3')]).toEqual([0, 28]);
  const now = (await desk.get(`work-lists/${list.id}`)).body as WorkList;
  expect(now.lines.map(({ typed: mark }) => mark?.by)).toEqual([place.volunteer.personId, place.volunteer.personId]);

  // Another person types the same paper, and reads it otherwise.
  const other = await typeBack(list, [{ ...mended, potted: 3 }, { number: young, note: 'small roots' }], about, desk);
  expect(other.map(({ problem }) => problem?.type)).toEqual(['/problems/work-list/typed-already', '/problems/work-list/typed-already']);
  expect(await balance('J3')).toBe(28);
});

test('two people who type one sheet at the same time write it once', async () => {
  const list = (await make('rootCheck', { placeId: T1 })).body as WorkList;
  const lines = list.lines.map(({ number, batch }) => ({ number, alive: batch.balance - 1, rooted: 15 }));
  const day = { observedOn: '2026-11-21' };
  const answers = await Promise.all([typeBack(list, lines, day), typeBack(list, lines, day, desk)]);

  expect(answers.map((each) => new Set(each.map(({ status }) => status))).map((each) => [...each]).flat().sort()).toEqual(['already', 'written']);
  expect([await balance('J3'), await balance('J4')]).toEqual([27, 38]);
});

test('what cannot be is asked about, and taken as it was seen when somebody says so', async () => {
  const list = (await make('rootCheck', { placeId: T2, days: 0 })).body as WorkList;
  const line = { number: numberOf(list, 'J1'), alive: 12 };
  const [asked] = await typeBack(list, [line]);
  expect(asked).toMatchObject({ status: 'refused', problem: { type: '/problems/entry/needs-another-look', discrepancies: [{ code: 'found-by-count', n: 2 }] } });
  expect(await typeBack(list, [line], { confirm: [line.number] })).toMatchObject([{ status: 'written', flags: [{ code: 'found-by-count' }] }]);
});

test('a line that cannot be says why, and what is asked depends on the list', async () => {
  const list = (await make('rootCheck', { placeId: T2, days: 0 })).body as WorkList;
  const refusals = async (line: object) => (await typeBack(list, [{ number: 1, ...line }]))[0]?.problem?.type.replace('/problems/', '');

  expect(await refusals({})).toBe('work-list/nothing-told');
  expect(await refusals({ rooted: 3 })).toBe('work-list/alive-missing');
  expect(await refusals({ alive: 3, rooted: 2, callused: 2 })).toBe('work-list/rooted-above-alive');
  expect(await refusals({ potted: 3, placeId: place.bench })).toBe('work-list/not-asked');
  expect(await refusals({ number: 99, alive: 1 })).toBe('work-list/no-such-line');
  const potting = (await make('pottingUp')).body as WorkList;
  expect((await typeBack(potting, [{ number: 1, potted: 1 }]))[0]?.problem?.type).toBe('/problems/work-list/place-missing');
  const twice = await volunteer.post(`work-lists/${list.id}/typed`, { observedOn: '2026-11-20', writtenAt: '2026-11-21T18:00:00Z', lines: [{ number: 1, alive: 1 }, { number: 1, alive: 2 }] });
  expect(twice.body.errors[0].pointer).toBe('#/lines');
  expect((await typeBack(list, [{ number: 1, note: 'wet' }])).map(({ status }) => status)).toEqual(['written']);
});

test('from the tray to the site: called, moved out, planted, checked', async () => {
  const calling = (await make('calling', { placeId: T1 })).body as WorkList;
  const [line] = [numberOf(calling, 'J4')];
  expect(await typeBack(calling, [{ number: line, lifted: 15, called: 23, placeId: place.bench, label: 'L2', container: 'plug' }], { observedOn: '2026-11-22' })).toMatchObject([{ status: 'written' }]);
  expect((await desk.get(`batches/${id('J4')}`)).body).toMatchObject({ balance: 0, calledOn: '2026-11-22' });

  const outside = (await desk.post('places', { id: newId(), kind: 'frame', name: 'Frame' })).body.id;
  const hardening = (await make('hardeningOff', { placeId: place.house })).body as WorkList;
  expect(await typeBack(hardening, hardening.lines.map(({ number }) => ({ number, moved: true, placeId: outside })), { observedOn: '2026-11-22' })).toMatchObject(hardening.lines.map(() => ({ status: 'written' })));
  expect((await make('hardeningOff', { placeId: place.house })).body.type).toBe('/problems/work-list/nothing-to-do');

  const planting = (await make('plantingDay', { toPlaceId: place.site })).body as WorkList;
  expect(labels(planting)).toEqual(['1 P1', '2 P2']);
  await typeBack(planting, [{ number: 1, planted: 4, placeId: place.plot, positions: ['r1 c1', 'r1 c2'], leavesNone: true, label: 'S1' }], { observedOn: '2026-11-23' });
  const check = (await make('siteCheck', { placeId: place.site })).body as WorkList;
  expect(labels(check)).toEqual(['1 S1']);
  expect(await typeBack(check, [{ number: 1, alive: 2, dead: [{ n: 1, cause: 'bark stripped' }], notFound: 1 }], { observedOn: '2026-11-24' })).toMatchObject([{ status: 'written' }]);
  const csv = await api.app.inject({ url: `/api/v1/programmes/${place.programme}/work-lists/${check.id}/lines.csv`, headers: desk.headers });
  expect(csv.body).toContain('1,S1,Lowmire Wood > P1,,CR-2,Corran Ridge,Juniperus communis,planted,3,');
});

test('cards for a sticking night tell each bundle, what is left of it, and the trays that hold the rest', async () => {
  const { body } = await volunteer.get(`trips/${place.tripId}/tray-cards`);
  expect(body).toMatchObject({ wentOn: '2025-10-01', stand: { name: 'Corran Ridge' } });
  const [first, second] = body.bundles;
  expect(first).toMatchObject({ donorTree: { label: 'CR-1' }, taxon: 'Juniperus communis', cuttings: 200, left: 120, stuck: [{ label: 'J1', n: 10 }, { label: 'J3', n: 30, rows: '2', place: 'T1', recipe: 'Heel, talc' }, { label: 'J4', n: 40 }] });
  expect(second).toMatchObject({ donorTree: { label: 'CR-2' }, left: 180 });
});

test('what a partner keeps is on no list, unless one asks for that very place', async () => {
  const garden = newId();
  await desk.post('places', { id: garden, kind: 'partner', name: 'School garden', partnerId: place.partnerId });
  const come = (label: string, placeId: string) =>
    desk.entry('2026-11-10', { kind: 'received', batchId: newId(), stickingId: newId(), stage: 'liner', n: 2, source: 'opening', donorTreeId: place.donors[0], placeId, label });
  expect(await desk.write([come('G1', garden), come('G2', place.bench)])).toMatchObject([{ status: 'written' }, { status: 'written' }]);
  const labelsOf = async (asked: object) => ((await make('pottingUp', asked)).body as WorkList).lines.map(({ batch }) => batch.label);
  const everywhere = await labelsOf({});
  expect(everywhere).toContain('G2');
  expect(everywhere).not.toContain('G1');
  expect(await labelsOf({ placeId: garden })).toEqual(['G1']);
});

test('a partner sees no sheet, types none, and is not told the cards', async () => {
  const partner = desk.as(await member(api, 'partner', place.programme));
  const list = (await make('rootCheck', { days: 0 })).body as WorkList;
  for (const path of ['work-lists', `work-lists/${list.id}`, `work-lists/${list.id}/lines.csv`, `trips/${place.tripId}/tray-cards`]) expect((await partner.get(path)).status).toBe(403);
  expect((await partner.post(`work-lists/${list.id}/typed`, { observedOn: '2026-11-20', writtenAt: '2026-11-21T18:00:00Z', lines: [{ number: 1, alive: 1 }] })).status).toBe(403);
});

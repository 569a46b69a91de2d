import { expect, test } from 'vitest';
import { Forecast } from '@sprigline/contract';
import { testApi } from '../../../../test/support/api.ts';
import { Desk, nursery } from '../../../../test/support/nursery.ts';
import { member, newId } from '../../../../test/support/people.ts';

const api = await testApi({ presentTime: () => new Date('2026-10-01T12:00:00Z') });
const place = await nursery(api);
const desk = new Desk(api, place);

// Two hundred were stuck two years ago: in week 20 three in five were lifted and the rest was called; in week 40 they were potted. Now 100 of
// the other tree have waited ten weeks, forty of them carried to another tray today, and 50 young plants of it, lifted in week 20, are in week 30.
const past = await desk.stick(200, {}, '2024-10-03');
const [liners, pots] = [newId(), newId()];
const waiting = await desk.stick(100, { bundleId: place.bundles[1], placeId: place.trays[1] }, '2026-07-23');
const lifted = await desk.stick(50, { bundleId: place.bundles[1], placeId: place.trays[2] }, '2026-03-05');
await desk.write([
  desk.entry('2025-02-20', { kind: 'lifted', batchId: past.batchId, toBatchId: liners, n: 120, placeId: place.bench }),
  desk.entry('2025-02-20', { kind: 'called', batchId: past.batchId, n: 80 }),
  desk.entry('2025-07-10', { kind: 'potted', batchId: liners, toBatchId: pots, n: 120, placeId: place.bench }),
  desk.entry('2026-07-23', { kind: 'lifted', batchId: lifted.batchId, toBatchId: newId(), n: 50, placeId: place.bench }),
  desk.entry('2026-10-01', { kind: 'moved', batchId: waiting.batchId, toBatchId: newId(), n: 40, placeId: place.trays[0] }),
]);

const read = async (query = ''): Promise<Forecast> => Forecast.parse((await desk.get(`readings/forecast?${query}`)).body);

test('about two in three of the cuttings and nearly all young plants are in pots within seven months, and limits hold that', async () => {
  const { species: [juniper] } = await read(`donorTreeId=${place.donors[1]}`);
  expect(juniper).toMatchObject({ here: { cuttings: 100, liners: 50, potted: 0 }, history: { stickings: 3, decided: 250 }, prior: { plants: 20 } });
  expect(juniper?.months).toHaveLength(19);
  expect(juniper?.months[0]).toMatchObject({ on: '2026-10-01', expected: 0 });
  // In week 20 of 270 that were watched, 20 of them the prior's, 170 went on: 63 of the 100, and what is lifted is potted but for the prior's part.
  const inSevenMonths = juniper?.months[7];
  expect(inSevenMonths!.expected).toBeGreaterThan(90);
  expect(inSevenMonths!.expected).toBeLessThan(115);
  expect(inSevenMonths!.lower).toBeLessThan(inSevenMonths!.expected);
  expect(inSevenMonths!.upper).toBeGreaterThan(inSevenMonths!.expected);
});

test('what would have been forecast then stands beside what came', async () => {
  const { species: [juniper] } = await read(`donorTreeId=${place.donors[0]}`);
  const madeInLiners = juniper?.past.find(({ madeOn }) => madeOn > '2025-02-20' && madeOn < '2025-07-10');
  expect(madeInLiners).toMatchObject({ came: 120 });
  expect(juniper?.calibration?.forecasts).toBeGreaterThanOrEqual(4);
});

test('too little history is said', async () => {
  const { species: [juniper] } = await read(`donorTreeId=${place.donors[1]}`);
  expect(juniper?.calibration).toBeNull();
});

test('nothing chosen is no forecast, the table has its lines, and a partner may not ask', async () => {
  expect((await read('season=1999')).species).toEqual([]);
  const answer = await api.app.inject({ url: `/api/v1/programmes/harrowdale/readings/forecast.csv?donorTreeId=${place.donors[1]}`, headers: desk.headers });
  expect(answer.body.trimEnd().split('\r\n').length).toBeGreaterThanOrEqual(20);
  const partner = await member(api, 'partner');
  expect((await api.app.inject({ url: '/api/v1/programmes/harrowdale/readings/forecast', headers: partner.headers })).statusCode).toBe(403);
});

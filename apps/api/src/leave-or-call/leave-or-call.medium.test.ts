import { beforeAll, describe, expect, test } from 'vitest';
import { LeaveOrCall } from '@sprigline/contract';
import { testApi } from '../../../../test/support/api.ts';
import { Desk, nursery } from '../../../../test/support/nursery.ts';
import { member, newId } from '../../../../test/support/people.ts';

let now = '2026-01-10';
const api = await testApi({ presentTime: () => new Date(`${now}T12:00:00Z`) });
const place = await nursery(api);
const desk = new Desk(api, place);

// A year earlier a hundred were stuck: fifty had roots in week 20, ninety in week 30, the rest was called after a year. Now twenty wait.
const past = await desk.stick(100, {}, '2024-10-02');
const tug = (day: string, alive: number, rooted: number) => desk.entry(day, { kind: 'counted', batchId: past.batchId, alive, look: 'tug', rooted });
const waiting = await desk.stick(20, { bundleId: place.bundles[1], placeId: place.trays[1] });

const read = async (query = ''): Promise<LeaveOrCall> => LeaveOrCall.parse((await desk.get(`readings/leave-or-call?${query}`)).body);

test('while nothing was ever seen to root, figures are those of the prior, and say so', async () => {
  const { trays: [tray], grounds: [ground] } = await read(`batchId=${waiting.batchId}`);
  expect(ground).toMatchObject({ rooted: 0, prior: { plants: 20, mean: 0.4, basis: 'common-practice' }, firstRoots: { days: 42, basis: 'prior' } });
  expect(tray).toMatchObject({ batchId: waiting.batchId, state: 'mostly-prior', green: 20, watchedAsLong: 0, handsOffUntil: null });
});

describe('with a year of its own', () => {
  beforeAll(() => desk.write([
    tug('2025-02-19', 100, 50), tug('2025-04-30', 100, 90),
    desk.entry('2025-05-01', { kind: 'lifted', batchId: past.batchId, toBatchId: newId(), n: 90, placeId: place.bench }),
    desk.entry('2025-10-02', { kind: 'called', batchId: past.batchId, n: 10 }),
  ]));

  test('worked by hand: of twenty that waited 100 days 145 of 178 root, none before day 140, and no verdict is given', async () => {
    const { trays, inAll } = await read();
    expect(inAll).toBe(1);
    // 100 of its own and 20 of the prior, of which 8 root in twelve parts, two of them by day 100; in the end 98 of the 120.
    expect(trays).toEqual([expect.objectContaining({
      batchId: waiting.batchId, stuckOn: '2025-10-02', days: 100, green: 20, state: 'told', watchedAsLong: 100, handsOffUntil: '2026-02-19', verdictOn: expect.stringMatching(/^2026-/),
      chance: expect.closeTo(145 / 178, 9), inAll: expect.closeTo((20 * 145) / 178, 9), months: 9,
    })]);
  });

  test('longer than anybody has watched, nothing is said', async () => {
    now = '2026-12-01';
    expect((await read()).trays).toEqual([expect.objectContaining({ state: 'beyond-history', chance: null, inAll: null, perMonth: null })]);
    now = '2026-01-10';
  });

  test('the table has a line for each tray; a called one is not asked about, and a partner may not ask', async () => {
    const answer = await api.app.inject({ url: '/api/v1/programmes/harrowdale/readings/leave-or-call.csv', headers: desk.headers });
    expect(answer.body.trimEnd().split('\r\n')).toHaveLength(2);
    expect((await read(`batchId=${past.batchId}`)).trays).toEqual([]);
    const partner = await member(api, 'partner');
    expect((await api.app.inject({ url: '/api/v1/programmes/harrowdale/readings/leave-or-call', headers: partner.headers })).statusCode).toBe(403);
  });
});

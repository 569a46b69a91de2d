import { expect, test } from 'vitest';
import { testApi } from '../../../../test/support/api.ts';
import { member } from '../../../../test/support/people.ts';

let time = '2026-02-28T23:30:00Z';
const api = await testApi({ presentTime: () => new Date(time) });
const { headers } = await member(api, 'coordinator');

const asOf = async () => (await api.app.inject({ url: '/api/v1/programmes/harrowdale/readings/funnels?by=stand', headers })).json().asOf as string;

test('all that is computed from days agrees on what day it is, in the programme’s zone', async () => {
  expect(await asOf()).toBe('2026-02-28');
  time = '2026-06-30T23:30:00Z';
  // British summer time is an hour ahead.
  expect(await asOf()).toBe('2026-07-01');
});

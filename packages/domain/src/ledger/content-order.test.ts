import { expect, test } from 'vitest';
import { counted, died, found, held, lifted, stuck, thrownOut } from '../../test/ledger/sayings.ts';
import { contentOrder } from './content-order.ts';
import type { Entry, Saying } from './entry.ts';

const entry = (saying: Saying, more: Partial<Entry> = {}): Entry => ({
  id: 'm',
  observedOn: '2025-03-10',
  receivedOn: '2025-03-10',
  door: 'outbox',
  saying,
  ...more,
});

test.each<[rule: string, first: Entry, second: Entry]>([
  ['the earlier day', entry(lifted(1), { observedOn: '2025-03-09', minute: 1439 }), entry(stuck(1))],
  ['the earlier minute', entry(lifted(1), { minute: 0 }), entry(died(1), { minute: 1 })],
  ['an arrival without a minute before any minute', entry(stuck(1)), entry(died(1), { minute: 0 })],
  ['a find without a minute before any minute', entry(found(1)), entry(died(1), { minute: 0 })],
  ['a hold without a minute before any minute', entry(held()), entry(lifted(1), { minute: 0 })],
  ['any minute before what has none', entry(thrownOut(1), { minute: 1439 }), entry(died(1))],
  ['at one minute arrivals before deaths', entry(found(1), { minute: 600 }), entry(died(1), { minute: 600 })],
  ['deaths before counts', entry(died(1)), entry(counted(1))],
  ['counts before what leaves', entry(counted(1)), entry(thrownOut(1))],
  ['no workday before one', entry(died(1), { id: 'z' }), entry(died(1), { workdayId: 'w', line: 1, id: 'a' })],
  [
    'the workday before the line',
    entry(died(1), { workdayId: 'v', line: 9 }),
    entry(died(1), { workdayId: 'w', line: 1 }),
  ],
  ['the line as a number', entry(died(1), { workdayId: 'w', line: 2 }), entry(died(1), { workdayId: 'w', line: 10 })],
  ['the line before the id', entry(died(1), { line: 1, id: 'z' }), entry(died(1), { line: 2, id: 'a' })],
  ['ids by code unit', entry(died(1), { id: 'Z' }), entry(died(1), { id: 'a' })],
  [
    'the minute of an unsure clock as none',
    entry(died(1), { minute: 700 }),
    entry(died(1), { minute: 5, clockUnsure: true }),
  ],
])('%s comes first', (_, first, second) => {
  expect(contentOrder(first, second)).toBeLessThan(0);
  expect(contentOrder(second, first)).toBeGreaterThan(0);
  expect(contentOrder(first, first)).toBe(0);
});

import { expect, test } from 'vitest';
import { dayAfter, minuteOfDay, sayDay, today } from './calendar.ts';

test('today is told in the programme’s zone, not in the server’s', () => {
  const lateInLondon = new Date('2026-11-25T23:30:00Z');
  expect(today('Europe/London', lateInLondon)).toBe('2026-11-25');
  expect(today('Europe/Helsinki', lateInLondon)).toBe('2026-11-26');
  expect(today('America/Los_Angeles', new Date('2026-11-26T07:59:00Z'))).toBe('2026-11-25');
});

test('a day moves by calendar days, over the end of a month and over the change of clocks', () => {
  expect(dayAfter('2028-02-28')).toBe('2028-02-29');
  expect(dayAfter('2026-03-01', -1)).toBe('2026-02-28');
  expect(dayAfter('2026-10-24', 2)).toBe('2026-10-26');
});

test('the minute of the day is the one on the wall', () => {
  expect(minuteOfDay('Europe/London', new Date('2026-07-01T08:05:00Z'))).toBe(9 * 60 + 5);
});

test('a day is said as people say it', () => {
  expect(sayDay('2026-11-25')).toBe('25\u00a0Nov\u00a02026');
  expect(sayDay('2026-11-25', 'long')).toBe('Wednesday, 25 November 2026');
});

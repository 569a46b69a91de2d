import { expect, test } from 'vitest';
import { minuteOfTime, momentIn } from './moment-in.ts';

test.each([
  ['winter in London', 'Europe/London', '2026-11-27', 510, '2026-11-27T08:30:00.000Z'],
  ['summer in London', 'Europe/London', '2026-07-01', 510, '2026-07-01T07:30:00.000Z'],
  ['behind UTC, next day there', 'America/Denver', '2026-11-27', 1439, '2026-11-28T06:59:00.000Z'],
  ['half an hour off', 'Asia/Kolkata', '2026-11-27', 0, '2026-11-26T18:30:00.000Z'],
  ['just before the clock is put forward', 'Europe/London', '2026-03-29', 59, '2026-03-29T00:59:00.000Z'],
  ['just after it was put forward', 'Europe/London', '2026-03-29', 120, '2026-03-29T01:00:00.000Z'],
  ['shown twice: the first time', 'Europe/London', '2026-10-25', 90, '2026-10-25T00:30:00.000Z'],
  ['a time that the clock skipped', 'Europe/London', '2026-03-29', 90, undefined],
])('%s', (_, zone, day, minute, moment) => {
  expect(momentIn(zone, day, minute)).toBe(moment);
});

test.each([['8:30', 510], ['08.30', 510], ['23:59', 1439], ['0:00', 0], ['24:00', undefined], ['8:60', undefined], ['half past', undefined], [undefined, undefined]])('%s is minute %s', (typed, minute) => {
  expect(minuteOfTime(typed)).toBe(minute);
});

import { expect, test } from 'vitest';
import { entryAllowedFrom, isBefore } from './re-entry.ts';

test.each([
  ['4 hours after 9 in the morning', { observedOn: '2026-11-10', minute: 540, reentryHours: 4 }, { day: '2026-11-10', minute: 780 }],
  ['over midnight', { observedOn: '2026-12-31', minute: 1380, reentryHours: 4 }, { day: '2027-01-01', minute: 180 }],
  ['without a time, from the end of the day', { observedOn: '2026-11-10', reentryHours: 4 }, { day: '2026-11-11', minute: 240 }],
  ['two days', { observedOn: '2026-02-27', minute: 0, reentryHours: 48 }, { day: '2026-03-01', minute: 0 }],
  ['at once', { observedOn: '2026-11-10', minute: 540, reentryHours: 0 }, { day: '2026-11-10', minute: 540 }],
  ['part of an hour is not cut short', { observedOn: '2026-11-10', minute: 0, reentryHours: 0.51 }, { day: '2026-11-10', minute: 31 }],
  ['no hours told', { observedOn: '2026-11-10', minute: 540 }, undefined],
])('%s', (_, sprayed, from) => {
  expect(entryAllowedFrom(sprayed)).toEqual(from);
});

test('moments go by day, then by minute', () => {
  expect(isBefore({ day: '2026-11-10', minute: 1400 }, { day: '2026-11-11', minute: 0 })).toBe(true);
  expect(isBefore({ day: '2026-11-10', minute: 10 }, { day: '2026-11-10', minute: 10 })).toBe(false);
});

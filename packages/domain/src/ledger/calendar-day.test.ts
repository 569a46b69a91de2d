import { expect, test } from 'vitest';
import { daysBetween } from './calendar-day.ts';

test.each([
  ['2025-03-01', '2025-03-01', 0],
  ['2025-02-28', '2025-03-01', 1],
  ['2024-02-28', '2024-03-01', 2],
  ['2025-12-31', '2026-01-01', 1],
  ['2025-03-29', '2025-03-31', 2],
  ['2025-03-10', '2025-03-01', -9],
])('from %s to %s it is %d days', (from, to, days) => {
  expect(daysBetween(from, to)).toBe(days);
});

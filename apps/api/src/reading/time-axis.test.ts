import { expect, test } from 'vitest';
import { timeAxis } from './time-axis.ts';

test('begins at none, goes in whole weeks and ends on the day of the reading', () => {
  const { weeks, points } = timeAxis(
    [{ day: '2026-01-10', stage: 'cutting', n: 40 }, { day: '2026-01-20', stage: 'cutting', n: -3 }, { day: '2026-01-24', stage: 'cutting', n: -30 }, { day: '2026-01-24', stage: 'liner', n: 30 }],
    [{ day: '2026-01-20', batches: 2 }, { day: '2026-01-24', batches: 1 }],
    '2026-01-24',
  );
  expect(weeks).toBe(1);
  expect(points.map(({ day, cutting, liner, looked }) => [day, cutting, liner, looked])).toEqual([
    ['2026-01-03', 0, 0, 0], ['2026-01-10', 40, 0, 0], ['2026-01-17', 40, 0, 0], ['2026-01-24', 7, 30, 3],
  ]);
});

test('the last point is the sum of all changes, however long the time was', () => {
  const changes = Array.from({ length: 3000 }, (_, at) => ({ day: new Date(Date.UTC(2010, 0, 1 + 2 * at)).toISOString().slice(0, 10), stage: 'potted' as const, n: at % 2 === 0 ? 3 : -1 }));
  const { weeks, points } = timeAxis(changes, [], '2027-01-01');
  expect(points.length).toBeLessThanOrEqual(106);
  expect(weeks).toBeGreaterThan(1);
  expect(points[0]).toMatchObject({ potted: 0 });
  expect(points.at(-1)).toMatchObject({ day: '2027-01-01', potted: 3000 });
});

test('where nothing was stuck there is nothing to draw', () => {
  expect(timeAxis([], [], '2026-01-01')).toEqual({ weeks: 1, points: [] });
});

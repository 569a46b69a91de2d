import { expect, test } from 'vitest';
import { donorDots, dotGrid } from './donor-dots.ts';

test.each([1, 3, 12, 40, 110, 300])('%i donor trees all have a place, in a lane that is wider than high', (most) => {
  const grid = dotGrid(most);
  expect((grid?.rows ?? 0) * (grid?.columns ?? 0)).toBeGreaterThanOrEqual(most);
  expect((grid?.columns ?? 0) / (grid?.rows ?? 1)).toBeLessThanOrEqual(7);
});

test('too many to count have no dots', () => {
  expect(dotGrid(301)).toBeUndefined();
});

test('those that live on stand first, then those that are gone, then those that never came so far', () => {
  const dots = donorDots({ rows: 2, columns: 3 }, 6, 4, 3);
  expect(dots.map(({ fate }) => fate)).toEqual(['left', 'left', 'left', 'gone', 'never', 'never']);
  expect(dots[3]).toMatchObject({ column: 1, row: 1 });
});

test('a donor tree that came late is drawn though the funnel began with fewer', () => {
  expect(donorDots({ rows: 2, columns: 2 }, 1, 2, 2)).toHaveLength(2);
});

import { expect, test } from 'vitest';
import { chartShape } from './chart-shape.ts';

const spread = (lowest: number, mean: number, highest: number) => ({ lowest, mean, highest });

test('days stand in the middle of their share of the width, high readings at the top', () => {
  const shape = chartShape('2026-11-01', '2026-11-04', [{ day: '2026-11-01', spread: spread(0, 5, 10) }, { day: '2026-11-04', spread: spread(10, 15, 20) }]);

  expect(shape?.days.map(({ x, top, middle, bottom }) => [x, top, middle, bottom])).toEqual([[0.125, 0.5, 0.75, 1], [0.875, 0, 0.25, 0.5]]);
  expect(shape?.ticks).toEqual([{ value: 0, y: 1 }, { value: 5, y: 0.75 }, { value: 10, y: 0.5 }, { value: 15, y: 0.25 }, { value: 20, y: 0 }]);
  expect([shape?.lowest, shape?.highest]).toEqual([0, 20]);
});

test('readings that are all alike stand in the middle', () => {
  expect(chartShape('2026-11-01', '2026-11-01', [{ day: '2026-11-01', spread: spread(4, 4, 4) }])?.days[0]).toMatchObject({ x: 0.5, top: 0.5, middle: 0.5, bottom: 0.5 });
});

test('no reading, no chart', () => {
  expect(chartShape('2026-11-01', '2026-11-30', [])).toBeUndefined();
});

import { expect, test } from 'vitest';
import { LAYERS, timeShape } from './time-shape.ts';

const point = (day: string, cutting: number, planted: number, looked = 0) => ({ day, cutting, liner: 0, potted: 0, planted, looked });
const incident = (from: string, until: string | null) =>
  ({ entryId: `${from}-${until ?? ''}`, placeId: 'p', place: 'T1', what: 'frost', severity: 'serious' as const, from, until, batches: 1 });

test('layers lie on each other, from the planted up, over the whole width', () => {
  const { layers, heights } = timeShape({ points: [point('2026-01-01', 0, 0), point('2026-01-11', 60, 40)], incidents: [] });
  expect(layers.map(({ layer }) => layer)).toEqual(LAYERS);
  // Forty of a hundred planted: at the end their upper edge is at 60 from the top, and the cuttings reach from there to the top.
  expect(layers[0]?.path).toBe('M0,100L100,60L100,100L0,100Z');
  expect(layers[3]?.path).toBe('M0,100L100,0L100,60L0,100Z');
  expect(heights).toContainEqual({ at: 0, plants: 100 });
});

test('an incident is as wide as it was long, and never too narrow to be seen; one that goes on reaches the end', () => {
  const { incidents } = timeShape({
    points: [point('2026-01-01', 1, 0), point('2026-01-11', 1, 0)],
    incidents: [incident('2026-01-03', '2026-01-08'), incident('2026-01-11', '2026-01-11'), incident('2025-12-01', null), incident('2025-11-01', '2025-11-02')],
  });
  expect(incidents.map(({ from, width }) => [from, width])).toEqual([[20, 50], [99.4, 0.6], [0, 100]]);
});

test('dates are few, so that they fit a phone', () => {
  const points = Array.from({ length: 100 }, (_, at) => point(new Date(Date.UTC(2020, 0, 1 + 20 * at)).toISOString().slice(0, 10), at, 0));
  const { days } = timeShape({ points, incidents: [] });
  expect(days.length).toBeGreaterThan(1);
  expect(days.length).toBeLessThanOrEqual(5);
});

test('without points there is nothing', () => {
  expect(timeShape({ points: [], incidents: [] }).layers).toEqual([]);
});

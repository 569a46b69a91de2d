import { expect, test } from 'vitest';
import { isSeenAnew, nearestToMiddle } from './code-seen.ts';

test('of a sheet of labels the one in the middle is meant', () => {
  expect(nearestToMiddle([{ text: 'T1', x: 0.2, y: 0.5 }, { text: 'T2', x: 0.45, y: 0.55 }, { text: 'T3', x: 0.8, y: 0.5 }])).toBe('T2');
  expect(nearestToMiddle([])).toBeUndefined();
});

test('a label that is held in front of the camera is read once', () => {
  const last = { text: 'T1', atMs: 1_000 };

  expect(isSeenAnew(undefined, 'T1', 0)).toBe(true);
  expect(isSeenAnew(last, 'T1', 1_150)).toBe(false);
  expect(isSeenAnew(last, 'T1', 3_000)).toBe(false);
  expect(isSeenAnew(last, 'T1', 3_001)).toBe(true);
  expect(isSeenAnew(last, 'T2', 1_150)).toBe(true);
});

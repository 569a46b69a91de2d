import { expect, test } from 'vitest';
import { waitAfter } from './sending.ts';

test('waits longer each time, five minutes at most, and never less than the server asked for', () => {
  expect([1, 2, 3, 4].map((failed) => waitAfter(failed, undefined, 1))).toEqual([2_000, 4_000, 8_000, 16_000]);
  expect(waitAfter(40, undefined, 1)).toBe(300_000);
  expect(waitAfter(1, undefined, 0)).toBe(1_000);
  expect(waitAfter(1, 30, 0)).toBe(30_000);
});

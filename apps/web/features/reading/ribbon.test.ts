import { expect, test } from 'vitest';
import { ribbonOf } from './ribbon.ts';

test('pieces lie end to end, each as long as its number is large', () => {
  expect(ribbonOf([5, 3, 2])).toEqual([{ from: 0, width: 50 }, { from: 50, width: 30 }, { from: 80, width: 20 }]);
});

test('no plants are no pieces', () => {
  expect(ribbonOf([])).toEqual([]);
});

import { expect, test } from 'vitest';
import { inWalkingOrder } from './walk-order.ts';

test.each([
  { says: 'lower numbers first', told: { a: 3, b: 1, c: 2 }, order: ['b', 'c', 'a'] },
  { says: 'a half comes between', told: { a: 1, b: 2, c: 1.5 }, order: ['a', 'c', 'b'] },
  { says: 'equal ones stay as they stood', told: { a: 2, b: 1, c: 1 }, order: ['b', 'c', 'a'] },
  { says: 'what is no number comes last, as it stood', told: { a: 'first', c: 7 }, order: ['c', 'a', 'b'] },
  { says: 'none told: as it was', told: {}, order: ['a', 'b', 'c'] },
])('$says', ({ told, order }) => {
  expect(inWalkingOrder(['a', 'b', 'c'], new Map<string, unknown>(Object.entries(told)))).toEqual(order);
});

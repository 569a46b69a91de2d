import { expect, test } from 'vitest';
import { isCount } from './count.ts';

test.each([0, 1, 40, Number.MAX_SAFE_INTEGER])('%d is a count', (value) => {
  expect(isCount(value)).toBe(true);
});

test.each([-1, 2.5, Number.NaN, Number.POSITIVE_INFINITY, Number.MAX_SAFE_INTEGER + 1])('%d is no count', (value) => {
  expect(isCount(value)).toBe(false);
});

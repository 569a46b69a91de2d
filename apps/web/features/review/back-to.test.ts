import { expect, test } from 'vitest';
import { backTo } from './back-to.ts';

test('after a decision the list is narrowed as before, and tells how many were decided', () => {
  expect(backTo('harrowdale', 'code=took-more&after=abc', 3)).toBe('/programmes/harrowdale/review?code=took-more&after=abc&decided=3');
  expect(backTo('harrowdale', '', 1)).toBe('/programmes/harrowdale/review?decided=1');
});

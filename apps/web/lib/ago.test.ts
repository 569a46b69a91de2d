import { expect, test } from 'vitest';
import { ago } from './ago.ts';

const MINUTE = 60_000;
test.each([
  [-5 * MINUTE, { unit: 'minutes', n: 0 }],
  [59 * MINUTE, { unit: 'minutes', n: 59 }],
  [60 * MINUTE, { unit: 'hours', n: 1 }],
  [24 * 60 * MINUTE - 1, { unit: 'hours', n: 23 }],
  [49 * 60 * MINUTE, { unit: 'days', n: 2 }],
])('%i ms', (ms, words) => {
  expect(ago(1e12, 1e12 + ms)).toEqual(words);
});

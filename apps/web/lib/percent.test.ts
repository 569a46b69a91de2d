import { expect, test } from 'vitest';
import { percent, percentRange } from './percent.ts';

test.each([[0, '0'], [0.0001, '0.1'], [0.004, '0.4'], [0.05, '5.0'], [0.314, '31'], [0.9951, '99.5'], [0.99999, '99.9'], [1, '100']])('%d is said as %s per cent', (share, said) => {
  expect(percent(share)).toBe(`${said}\u00a0%`);
});

test('a range has one sign', () => {
  expect(percentRange({ lower: 0.27, upper: 0.6 })).toBe('27–60\u00a0%');
});

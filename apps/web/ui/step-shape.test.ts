import { expect, test } from 'vitest';
import { stepShape, topOf } from './step-shape.ts';

test('the line slopes where nobody saw when it rose, stands upright where it rose at once, and is level else', () => {
  const { line } = stepShape([{ since: 10, at: 20, share: 0.25 }, { since: 30, at: 30, share: 0.5 }], 40, 40, 0.5);
  expect(line).toBe('M0,100L25,100L50,50L75,50L75,0L100,0');
});

test('the band goes along the upper limits and back along the lower, and is nothing without limits', () => {
  const { band } = stepShape([{ since: 5, at: 10, share: 0.5, lower: 0.25, upper: 0.75 }], 10, 10, 1);
  expect(band).toBe('M0,100L50,100L100,25L100,25L100,75L100,75L50,100L0,100Z');
  expect(stepShape([{ since: 5, at: 10, share: 0.5 }], 10, 10, 1).band).toBe('');
});

test('a line of no steps lies on the ground', () => expect(stepShape([], 10, 10, 1).line).toBe('M0,100L100,100'));

test.each([[0.31, undefined, 0.4], [0.3, undefined, 0.3], [0.5, 0.92, 1], [0, undefined, 0.1]])('a share of %d with an upper limit of %s reaches to %d', (share, upper, top) => {
  expect(topOf([{ steps: [{ since: 0, at: 1, share, upper }] }])).toBe(top);
});

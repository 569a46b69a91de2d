import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { wilsonInterval } from '../survival/wilson-interval.ts';
import { clopperPearsonInterval } from './clopper-pearson-interval.ts';
import { midPInterval } from './mid-p-interval.ts';
import { newcombeDifference } from './newcombe-difference.ts';
import { sampleSize, upwards } from './sample-size.ts';

const HALF_A_DIGIT = 0.00005;
const printed = (value: number, wanted: number) => expect(Math.abs(value - wanted)).toBeLessThanOrEqual(HALF_A_DIGIT);
const someOf = fc.integer({ min: 1, max: 3_000 }).chain((plants) => fc.tuple(fc.integer({ min: 0, max: plants }), fc.constant(plants)));

describe('intervals on one share', () => {
  // Newcombe RG (1998) Stat. Med. 17:857-872, Table I, methods 5 and 6; printed values from memory.
  test.each([
    [81, 263, 0.2527, 0.3676, 0.2544, 0.3658], [15, 148, 0.0578, 0.1617, 0.0601, 0.1581],
    [0, 20, 0, 0.1684, 0, 0.1391], [1, 29, 0.0009, 0.1776, 0.0017, 0.1585],
  ])('%d of %d as printed', (successes, plants, lower, upper, midLower, midUpper) => {
    const exact = clopperPearsonInterval(successes, plants);
    printed(exact.lower, lower);
    printed(exact.upper, upper);
    const mid = midPInterval(successes, plants);
    printed(mid.lower, midLower);
    printed(mid.upper, midUpper);
  });

  test('none and all of n worked by hand: the limit is the n-th root', () => {
    expect(clopperPearsonInterval(0, 3).upper).toBeCloseTo(1 - 0.025 ** (1 / 3), 12);
    expect(clopperPearsonInterval(3, 3).lower).toBeCloseTo(0.025 ** (1 / 3), 12);
    // Half of (1 - p)^3 is 0.025.
    expect(midPInterval(0, 3).upper).toBeCloseTo(1 - 0.05 ** (1 / 3), 12);
  });

  test('mirror, and lie one inside the other', () => {
    fc.assert(fc.property(someOf, ([successes, plants]) => {
      const exact = clopperPearsonInterval(successes, plants);
      const mirrored = clopperPearsonInterval(plants - successes, plants);
      expect(exact.lower).toBeCloseTo(1 - mirrored.upper, 10);
      const mid = midPInterval(successes, plants);
      expect(mid.lower).toBeGreaterThanOrEqual(exact.lower - 1e-12);
      expect(mid.upper).toBeLessThanOrEqual(exact.upper + 1e-12);
      expect(mid.lower).toBeLessThanOrEqual(successes / plants);
      expect(mid.upper).toBeGreaterThanOrEqual(successes / plants);
    }), { numRuns: 60 });
  });

  test('hold for a thousand million plants, where they come close to Wilson', () => {
    const [exact, wilson] = [clopperPearsonInterval(999_000_000, 1_000_000_000), wilsonInterval(999_000_000, 1_000_000_000)];
    expect(exact.lower).toBeCloseTo(wilson.lower, 8);
    expect(exact.upper).toBeCloseTo(wilson.upper, 8);
  });

  test.each([[0, 0], [3, 2], [-1, 4], [1.5, 4]])('%d of %d is refused', (successes, plants) => {
    expect(() => clopperPearsonInterval(successes, plants)).toThrow(expect.objectContaining({ code: expect.stringMatching(/^survival\/(no-plants|not-a-count)$/) }));
    expect(() => midPInterval(successes, plants)).toThrow();
  });
  test.each([0, 1, -0.5, Number.NaN])('so is a confidence of %d', (confidence) => expect(() => midPInterval(1, 2, confidence)).toThrow(expect.objectContaining({ code: 'survival/not-a-level' })));
});

describe('a difference of two shares', () => {
  // Newcombe RG (1998) Stat. Med. 17:873-890, Table II, method 10; printed values from memory.
  test.each([
    [56, 70, 48, 80, 0.2, 0.0524, 0.3339], [9, 10, 3, 10, 0.6, 0.1705, 0.809], [6, 7, 2, 7, 0.5714, 0.0582, 0.8062], [5, 56, 0, 29, 0.0893, -0.0381, 0.1926],
    [0, 10, 0, 20, 0, -0.1611, 0.2775], [0, 10, 0, 10, 0, -0.2775, 0.2775], [10, 10, 0, 20, 1, 0.6791, 1], [10, 10, 0, 10, 1, 0.6075, 1],
  ])('%d/%d - %d/%d as printed', (a, m, b, n, difference, lower, upper) => {
    const found = newcombeDifference({ successes: a, plants: m }, { successes: b, plants: n });
    printed(found.difference, difference);
    printed(found.lower, lower);
    printed(found.upper, upper);
  });

  test('worked by hand with a point of 1: Wilson’s limits for 1 of 1 and 0 of 1 are 1/2 and 1, 0 and 1/2', () => {
    const { difference, lower, upper } = newcombeDifference({ successes: 1, plants: 1 }, { successes: 0, plants: 1 }, 1);
    expect([difference, upper]).toEqual([1, 1]);
    expect(lower).toBeCloseTo(1 - Math.SQRT1_2, 12);
  });

  test('the other way round, it is the same with other signs', () => {
    fc.assert(fc.property(someOf, someOf, ([a, m], [b, n]) => {
      const [there, back] = [newcombeDifference({ successes: a, plants: m }, { successes: b, plants: n }), newcombeDifference({ successes: b, plants: n }, { successes: a, plants: m })];
      expect(there.lower).toBeCloseTo(-back.upper, 12);
      expect(there.lower).toBeGreaterThanOrEqual(-1 - 1e-12);
      expect(there.upper).toBeLessThanOrEqual(1 + 1e-12);
    }));
  });
});

describe('how many to look at', () => {
  // Cochran 1977, 4.4: n0 = z^2 p q / e^2, and n0 / (1 + (n0 - 1) / N); worked by hand with z = 1.96.
  test.each([[0.5, 0.1, 97, 81], [0.8, 0.1, 62, 55], [0.8, 0.05, 246, 166], [0.5, 0.05, 385, 218], [0.9, 0.05, 139, 109]])('%d to within %d', (expected, margin, many, of500) => {
    expect(sampleSize(expected, margin)).toBe(many);
    expect(sampleSize(expected, margin, 500)).toBe(of500);
  });

  test('never more than there are, never none', () => {
    fc.assert(fc.property(fc.double({ min: 0, max: 1, noNaN: true }), fc.double({ min: 0.001, max: 0.999, noNaN: true }), fc.integer({ min: 1, max: 1e9 }), (expected, margin, population) => {
      const size = sampleSize(expected, margin, population);
      expect(size).toBeGreaterThanOrEqual(1);
      expect(size).toBeLessThanOrEqual(population);
      expect(size).toBeLessThanOrEqual(sampleSize(expected, margin));
    }));
  });

  test('one plant is looked at, also where nothing varies', () => expect([sampleSize(0, 0.001, 1), sampleSize(1, 0.5, 1), sampleSize(5e-324, 0.001, 1)]).toEqual([1, 1, 1]));

  test('dust is not rounded up', () => expect([upwards(100 / 0.5), upwards(0.1 * 3 * 10), upwards(2.1)]).toEqual([200, 3, 3]));
  test('a margin that no count reaches is refused', () => expect(() => sampleSize(0.5, 1e-9)).toThrow(expect.objectContaining({ code: 'numbers/not-a-share' })));
  test.each([[-0.1, 0.1, 5], [1.1, 0.1, 5], [0.5, 0, 5], [0.5, 1, 5], [0.5, 0.1, 0], [Number.NaN, 0.1, 5]])('%d, %d, %d is refused', (expected, margin, population) => expect(() => sampleSize(expected, margin, population)).toThrow());
});

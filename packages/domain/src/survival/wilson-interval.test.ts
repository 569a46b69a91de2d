import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { wilsonInterval } from './wilson-interval.ts';

// Newcombe RG (1998) "Two-sided confidence intervals for the single proportion",
// Stat. Med. 17:857-872, Table I, method 3 (score, no continuity correction).
// Figures from memory. Printed to four decimals: the tolerance is half of the last printed digit.
const NEWCOMBE_1998_TABLE_I = [
  { alive: 81, planted: 263, lower: 0.2553, upper: 0.3662 },
  { alive: 15, planted: 148, lower: 0.0624, upper: 0.1605 },
  { alive: 0, planted: 20, lower: 0, upper: 0.1611 },
  { alive: 1, planted: 29, lower: 0.0061, upper: 0.1718 },
];
const HALF_A_PRINTED_DIGIT = 0.00005;

describe('wilsonInterval', () => {
  test.each(NEWCOMBE_1998_TABLE_I)('agrees with Newcombe 1998 for $alive of $planted', (printed) => {
    const { lower, upper } = wilsonInterval(printed.alive, printed.planted);

    expect(Math.abs(lower - printed.lower)).toBeLessThanOrEqual(HALF_A_PRINTED_DIGIT);
    expect(Math.abs(upper - printed.upper)).toBeLessThanOrEqual(HALF_A_PRINTED_DIGIT);
  });

  // With z = 1 everything is rational where share (1 - share) / n + 1 / (4 n^2) is a square.
  // 0 of 3: centre (1/6)/(4/3) = 1/8, half-width (3/4)(1/6) = 1/8: from 0 to 1/4.
  // 2 of 4: centre (1/2 + 1/8)/(5/4) = 1/2, half-width (4/5) sqrt(5/64): 1/2 +- 1/sqrt(20).
  test('agrees with two cases worked by hand at z = 1', () => {
    expect(wilsonInterval(0, 3, 1)).toEqual({ lower: 0, upper: 1 / 4 });
    expect(wilsonInterval(2, 4, 1).lower).toBeCloseTo(1 / 2 - 1 / Math.sqrt(20), 14);
    expect(wilsonInterval(2, 4, 1).upper).toBeCloseTo(1 / 2 + 1 / Math.sqrt(20), 14);
  });

  const someOfPlants = fc
    .integer({ min: 1, max: 100_000 })
    .chain((plants) => fc.tuple(fc.integer({ min: 0, max: plants }), fc.constant(plants)));

  test('counting the dead instead of the living mirrors the interval', () => {
    fc.assert(
      fc.property(someOfPlants, ([alive, plants]) => {
        const living = wilsonInterval(alive, plants);
        const dead = wilsonInterval(plants - alive, plants);

        expect(dead.lower).toBeCloseTo(1 - living.upper, 12);
        expect(dead.upper).toBeCloseTo(1 - living.lower, 12);
      }),
    );
  });

  test('holds the share itself, inside 0 and 1', () => {
    fc.assert(
      fc.property(someOfPlants, ([alive, plants]) => {
        const { lower, upper } = wilsonInterval(alive, plants);

        expect(lower).toBeGreaterThanOrEqual(0);
        expect(lower).toBeLessThanOrEqual(alive / plants);
        expect(upper).toBeGreaterThanOrEqual(alive / plants);
        expect(upper).toBeLessThanOrEqual(1);
      }),
    );
  });

  test.each([
    ['survival/no-plants', 0, 0, 2],
    ['survival/not-a-count', -1, 10, 2],
    ['survival/not-a-count', 11, 10, 2],
    ['survival/not-a-count', 2.5, 10, 2],
    ['survival/not-a-count', Number.NaN, 10, 2],
    ['survival/not-a-count', 1, Number.NaN, 2],
    ['survival/not-a-level', 1, 10, 0],
    ['survival/not-a-level', 1, 10, Number.NaN],
    ['survival/not-a-level', 1, 10, Number.POSITIVE_INFINITY],
  ])('answers %s for %d of %d at z %d', (code, successes, plants, z) => {
    expect(() => wilsonInterval(successes, plants, z)).toThrow(
      expect.objectContaining({ name: 'DomainError', code }),
    );
  });
});

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { hillNumber } from './hill-number.ts';

// Spiders of girdled and of logged trees at Harvard Forest, used in Chao A et al. (2014)
// Ecol. Monogr. 84:45-67. Counts read in a public copy; the printed observed diversities of
// order 0, 1 and 2 from memory, two decimals: the tolerance is half of the last digit.
const ones = (n: number): number[] => Array<number>(n).fill(1);
const GIRDLED = [46, 22, 17, 15, 15, 9, 8, 6, 6, 4, 2, 2, 2, 2, ...ones(12)];
const LOGGED = [88, 22, 16, 15, 13, 10, 8, 8, 7, 7, 7, 5, 4, 4, 4, 3, 3, 3, 3, 2, 2, 2, 2, ...ones(14)];
const HALF_A_PRINTED_DIGIT = 0.005;

describe('hillNumber', () => {
  test.each([
    { name: 'girdled', counts: GIRDLED, plants: 168, printed: [26, 12.06, 7.84] },
    { name: 'logged', counts: LOGGED, plants: 252, printed: [37, 14.42, 6.76] },
  ])('agrees with Chao et al. 2014 for the $name trees', ({ counts, plants, printed }) => {
    expect(counts.reduce((a, b) => a + b)).toBe(plants);
    printed.forEach((value, order) => {
      expect(Math.abs(hillNumber(counts, order) - value)).toBeLessThanOrEqual(HALF_A_PRINTED_DIGIT);
    });
  });

  // 50 25 15 10: squares 2500 + 625 + 225 + 100 = 3450, so 10000/3450. 5 3 2: 100/38. 2 1 1: 16/6.
  // 2 1 1 at order 1: entropy 1/2 ln 2 + 2 (1/4) ln 4 = 3/2 ln 2, so 2^(3/2).
  // 4 1 at order 1/2: roots 2/sqrt5 + 1/sqrt5 = 3/sqrt5, squared 9/5. 2 1 1 at order 3: sum of cubes 10/64, so sqrt(64/10).
  test.each([
    { counts: [50, 25, 15, 10], order: 2, donors: 10_000 / 3450 },
    { counts: [5, 3, 2], order: 2, donors: 100 / 38 },
    { counts: [2, 1, 1], order: 2, donors: 16 / 6 },
    { counts: [2, 1, 1], order: 1, donors: 2 ** 1.5 },
    { counts: [4, 1], order: 0.5, donors: 9 / 5 },
    { counts: [2, 1, 1], order: 3, donors: Math.sqrt(6.4) },
    { counts: [100], order: 1, donors: 1 },
    { counts: [91, ...ones(9)], order: 0, donors: 10 },
  ])('agrees with $counts at order $order worked by hand', ({ counts, order, donors }) => {
    expect(hillNumber(counts, order)).toBeCloseTo(donors, 12);
  });

  const counts = fc.array(fc.integer({ min: 0, max: 1000 }), { minLength: 1, maxLength: 60 }).filter((c) => c.some((n) => n > 0));
  const order = fc.double({ min: 0, max: 60, noNaN: true });

  test('falls as the order rises, from donors present down to 1', () => {
    fc.assert(
      fc.property(counts, order, order, (plants, a, b) => {
        const [low, high] = [hillNumber(plants, Math.min(a, b)), hillNumber(plants, Math.max(a, b))];
        expect(low).toBeGreaterThanOrEqual(high * (1 - 1e-9));
        expect(low).toBeLessThanOrEqual(plants.filter((n) => n > 0).length);
        expect(high).toBeGreaterThanOrEqual(1);
      }),
    );
  });

  test('empty donors change nothing, nor do twice the plants of each', () => {
    fc.assert(
      fc.property(counts, order, (plants, q) => {
        expect(hillNumber([...plants, 0, 0], q)).toBeCloseTo(hillNumber(plants, q), 9);
        expect(hillNumber(plants.map((n) => 2 * n), q)).toBeCloseTo(hillNumber(plants, q), 9);
      }),
    );
  });

  test('two benches alike with no donor in common have twice the donors of one', () => {
    fc.assert(
      fc.property(counts, order, (plants, q) => {
        expect(hillNumber([...plants, ...plants], q)).toBeCloseTo(2 * hillNumber(plants, q), 8);
      }),
    );
  });

  test('runs through order 1 without a step', () => {
    fc.assert(
      fc.property(counts, fc.constantFrom(1e-12, 1e-8, 1e-4, 0.99e-3, 1.01e-3), (plants, step) => {
        expect(hillNumber(plants, 1 + step) / hillNumber(plants, 1)).toBeCloseTo(1, 2);
        expect(hillNumber(plants, 1 + 1e-12)).toBeCloseTo(hillNumber(plants, 1), 8);
        expect(hillNumber(plants, 1 + 0.999_999e-3)).toBeCloseTo(hillNumber(plants, 1 + 1.000_001e-3), 5);
      }),
    );
  });

  test.each([
    ['diversity/no-plants', [], 1],
    ['diversity/no-plants', [0, 0], 1],
    ['diversity/not-a-count', [3, -1], 1],
    ['diversity/not-a-count', [3, Number.NaN], 1],
    ['diversity/not-a-count', [0.5], 1],
    ['diversity/not-an-order', [3], -1],
    ['diversity/not-an-order', [3], Number.NaN],
    ['diversity/not-an-order', [3], Number.POSITIVE_INFINITY],
  ])('answers %s for %o at order %d', (code, plants, q) => {
    expect(() => hillNumber(plants, q)).toThrow(expect.objectContaining({ name: 'DomainError', code }));
  });
});

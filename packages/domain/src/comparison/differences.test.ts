import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { commonDifference } from './common-difference.ts';
import { donorDifference } from './donor-difference.ts';
import { tells, type TwoByTwo } from './two-by-two.ts';

const table = (yes: number, of: number, otherYes: number, otherOf: number): TwoByTwo => ({ first: { yes, no: of - yes }, second: { yes: otherYes, no: otherOf - otherYes } });
const group = fc.record({ yes: fc.integer({ min: 0, max: 30 }), no: fc.integer({ min: 0, max: 30 }) });
const tables = fc.array(fc.record({ first: group, second: group }), { minLength: 1, maxLength: 8 }).filter((strata) => strata.some(tells));
const Z = 1.959963984540054;
/** `qt(0.975, 4)` and `qt(0.975, 8)` in R, as printed in every table to three decimals: 2.776 and 2.306. */
const [T_4, T_8] = [2.7764451051977987, 2.306004135033371];

describe('the common difference', () => {
  test('of two strata, as fractions', () => {
    // Sato: weights 5 and 8/3, gaps 3/2 and 4/3, P -3/4 and -2/3, Q 27/20 and 5/6.
    const { difference, lower } = commonDifference([table(7, 10, 4, 10), table(3, 4, 2, 8)]);
    expect(difference).toBeCloseTo(17 / 46, 12);
    expect(difference - lower).toBeCloseTo(Z * Math.sqrt(((17 / 46) * (-17 / 12) + 131 / 60) / (23 / 3) ** 2), 10);
  });

  test('of one stratum has the limits of two plain shares', () => {
    fc.assert(fc.property(fc.record({ first: group, second: group }).filter(({ first, second }) => first.yes * first.no * second.yes * second.no > 0), (one) => {
      const { difference, lower } = commonDifference([one]);
      const [m, n] = [one.first.yes + one.first.no, one.second.yes + one.second.no];
      const [p, q] = [one.first.yes / m, one.second.yes / n];
      expect(difference).toBeCloseTo(p - q, 12);
      expect(lower).toBeCloseTo(Math.max(-1, p - q - Z * Math.sqrt((p * (1 - p)) / m + (q * (1 - q)) / n)), 10);
    }));
  });

  test('of five trees that differ knows that they do', () => {
    // Differences 1, 1, 0, -1/2, 1/2, equally heavy: mean 2/5, variance of the mean 1.7 / 20.
    const found = commonDifference([table(2, 2, 0, 2), table(2, 2, 0, 2), table(1, 2, 1, 2), table(0, 2, 1, 2), table(2, 2, 1, 2)]);
    expect(found).toMatchObject({ by: 'strata', strata: 5, upper: 1 });
    expect(found.lower).toBeCloseTo(0.4 - T_4 * Math.sqrt(1.7 / 20), 10);
  });

  test('of trees of other sizes weighs them, and trees that are all alike leave plants to be sure by', () => {
    // As above with twice the plants of the first: weights 2, 1, 1, 1, 1, gaps 2, 1, 0, -1/2, 1/2, mean 1/2; what is left 1, 1/2, -1/2, -1, 0.
    const found = commonDifference([table(4, 4, 0, 4), table(2, 2, 0, 2), table(1, 2, 1, 2), table(0, 2, 1, 2), table(2, 2, 1, 2)]);
    expect(found).toMatchObject({ by: 'strata', difference: expect.closeTo(1 / 2, 12) });
    expect(found.lower).toBeCloseTo(0.5 - (T_4 * Math.sqrt((5 / 4) * 2.5)) / 6, 10);
    expect(commonDifference(Array.from({ length: 5 }, () => table(5, 10, 3, 10)))).toMatchObject({ by: 'plants', strata: 5, difference: expect.closeTo(0.2, 12) });
  });

  test('turns round with its groups, keeps to what a difference can be, and needs no stratum of one group', () => {
    fc.assert(fc.property(tables, (strata) => {
      const [there, back] = [commonDifference(strata), commonDifference(strata.map(({ first, second }) => ({ first: second, second: first })))];
      expect(back.difference).toBeCloseTo(-there.difference, 12);
      expect(back.lower).toBeCloseTo(-there.upper, 9);
      expect(there.lower).toBeGreaterThanOrEqual(-1);
      expect(there.lower).toBeLessThanOrEqual(there.difference + 1e-12);
      expect(there.upper).toBeGreaterThanOrEqual(there.difference - 1e-12);
      expect(commonDifference([...strata, table(0, 0, 3, 9), table(2, 5, 0, 0)])).toEqual(there);
    }));
  });

  test('of all against none has limits all the same', () => expect(commonDifference([table(5, 5, 0, 5)])).toMatchObject({ difference: 1, lower: expect.closeTo(0.3855, 3), upper: 1 }));
  test('a stratum of one group tells nothing then either', () => expect(commonDifference([table(0, 1, 1, 1), table(0, 0, 3, 9), table(2, 5, 0, 0)])).toEqual(commonDifference([table(0, 1, 1, 1)])));
  test('of nothing is refused', () => expect(() => commonDifference([table(5, 5, 5, 5)])).toThrow(expect.objectContaining({ code: 'comparison/nothing-to-compare' })));
});

describe('the difference between trees', () => {
  const trees = (...successes: number[]) => successes.map((n) => ({ successes: n, plants: 10 }));
  test('by hand: 3/5 less 2/5, each with variance 1/50, eight degrees of freedom', () => {
    const { difference, lower, upper } = donorDifference(trees(2, 4, 6, 8, 10), trees(0, 2, 4, 6, 8));
    expect(difference).toBeCloseTo(1 / 5, 12);
    expect(upper - difference).toBeCloseTo(T_8 * Math.sqrt(2 / 50), 9);
    expect(difference - lower).toBeCloseTo(T_8 * Math.sqrt(2 / 50), 9);
  });
  test('needs five trees on either side', () => expect(() => donorDifference(trees(1, 2, 3, 4), trees(1, 2, 3, 4, 5))).toThrow(expect.objectContaining({ code: 'survival/too-few-donors' })));
});

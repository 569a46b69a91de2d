import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { effectiveDonors } from './effective-donors.ts';

describe('effectiveDonors', () => {
  // Barro Colorado, first of the fifty plots of the tree census in R's package vegan (`BCI[1, ]`):
  // inverse Simpson 39.41555 as printed by its `diversity`, five decimals, and H' 4.018412; from memory.
  test('agrees with the plot printed in many a manual', () => {
    const repeated = [[6, 4], [5, 6], [4, 6], [3, 9], [2, 18], [1, 31]] as const;
    const plot = [25, 24, 22, 21, 18, 17, 15, 14, 14, 13, 13, 12, 12, 11, 11, 10, 9, 8, 7].concat(
      repeated.flatMap(([plants, donors]) => Array<number>(donors).fill(plants)),
    );
    const { order1, order2 } = effectiveDonors(plot);

    expect(plot.reduce((a, b) => a + b)).toBe(448);
    expect(Math.abs(order2 - 39.41555)).toBeLessThanOrEqual(0.000005);
    expect(Math.abs(Math.log(order1) - 4.018412)).toBeLessThanOrEqual(0.0000005);
  });

  // 40 30 20 10: sum of squares 3000 of 10000, so 10/3.
  test('agrees with cases worked by hand', () => {
    expect(effectiveDonors([40, 30, 20, 10]).order2).toBeCloseTo(10 / 3, 13);
    expect(effectiveDonors(Array<number>(10).fill(10)).order1).toBeCloseTo(10, 12);
    expect(effectiveDonors([7])).toEqual({ order1: 1, order2: 1 });
  });

  test('order 2 is never above order 1, nor order 1 above the donors present', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 500 }), { minLength: 1 }), (plants) => {
        const { order1, order2 } = effectiveDonors(plants);
        expect(order2).toBeLessThanOrEqual(order1 * (1 + 1e-12));
        expect(order1).toBeLessThanOrEqual(plants.length);
      }),
    );
  });

  test('answers diversity/no-plants for an empty bench', () => {
    expect(() => effectiveDonors([])).toThrow(expect.objectContaining({ code: 'diversity/no-plants' }));
  });
});

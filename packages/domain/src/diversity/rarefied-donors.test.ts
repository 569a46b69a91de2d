import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { rarefiedDonors } from './rarefied-donors.ts';

const fill = (plants: number, donors: number): number[] => Array<number>(donors).fill(plants);

// Barro Colorado, first plot of the tree census in R's package vegan (`BCI[1, ]`, 448 trees, 93 kinds);
// 84.33992 for 340 is long printed for that example, from memory, five decimals.
const PLOT = [25, 24, 22, 21, 18, 17, 15, 14, 14, 13, 13, 12, 12, 11, 11, 10, 9, 8, 7].concat(
  fill(6, 4), fill(5, 6), fill(4, 6), fill(3, 9), fill(2, 18), fill(1, 31),
);

// Osa beetles, second growth (Janzen DH 1973), as tabulated in Colwell RK et al. (2012) J. Plant Ecol. 5:3-21:
// [caught, kinds]. About 70 kinds in any 237 of the 976; counts and figure from memory, printed whole.
const OSA = [
  [1, 70], [2, 17], [3, 4], [4, 5], [5, 5], [6, 5], [7, 5], [8, 3], [9, 1], [10, 2], [11, 3], [12, 2], [14, 2],
  [17, 1], [19, 2], [20, 3], [21, 1], [24, 1], [26, 1], [40, 1], [57, 2], [60, 1], [64, 1], [71, 1], [77, 1],
].flatMap(([caught = 0, kinds = 0]) => fill(caught, kinds));

// Spiders of girdled and of logged trees at Harvard Forest, the counts of Chao A et al. (2014) Ecol. Monogr. 84:45-67; the values were worked out
// in R from Hurlbert's formula, not printed there.
const GIRDLED = [46, 22, 17, 15, 15, 9, 8, 6, 6, 4, 2, 2, 2, 2, ...fill(1, 12)];
const LOGGED = [88, 22, 16, 15, 13, 10, 8, 8, 7, 7, 7, 5, 4, 4, 4, 3, 3, 3, 3, 2, 2, 2, 2, ...fill(1, 14)];

describe('rarefiedDonors', () => {
  test.each([
    [GIRDLED, 10, 6.478617], [GIRDLED, 50, 15.0301], [GIRDLED, 84, 18.91236], [GIRDLED, 100, 20.45943], [GIRDLED, 160, 25.42059],
    [LOGGED, 10, 6.571796], [LOGGED, 50, 18.42002], [LOGGED, 100, 25.64234], [LOGGED, 160, 31.10894],
  ])('spiders of %j, %d taken', (counts, taken, kinds) => expect(Math.abs(rarefiedDonors(counts, taken) - kinds)).toBeLessThanOrEqual(0.000005));

  test('very many by another way, and both ways meet', () => {
    expect(rarefiedDonors([100_001, 900_000], 100_001)).toBeCloseTo(rarefiedDonors([100_001, 900_000], 100_000), 4);
    // Half of 400,000 taken of two donors in equal numbers: both are there.
    expect(rarefiedDonors([200_000, 200_000], 200_000)).toBeCloseTo(2, 12);
    // One taken more than others there are must be of it.
    expect(rarefiedDonors([150_000, 150_000], 150_001)).toBe(2);
  });

  test('agrees with the printed examples', () => {
    expect(Math.abs(rarefiedDonors(PLOT, 340) - 84.33992)).toBeLessThanOrEqual(0.000005);
    expect(OSA.reduce((a, b) => a + b)).toBe(976);
    expect(Math.abs(rarefiedDonors(OSA, 237) - 70)).toBeLessThanOrEqual(0.5);
  });

  // 2 1 1, two taken of six pairs: donor one missed once, the others three times each: 3 - 7/6.
  // 5 3 2, four taken of 210: missed by 5, 35 and 70 of them: 3 - 110/210.
  test('agrees with cases worked by hand', () => {
    expect(rarefiedDonors([2, 1, 1], 2)).toBeCloseTo(11 / 6, 14);
    expect(rarefiedDonors([5, 3, 2], 4)).toBeCloseTo(52 / 21, 14);
  });

  const counts = fc.array(fc.integer({ min: 0, max: 300 }), { minLength: 1, maxLength: 40 }).filter((c) => c.some((n) => n > 0));
  const draw = counts.chain((plants) =>
    fc.tuple(fc.constant(plants), fc.integer({ min: 1, max: plants.reduce((a, b) => a + b) })),
  );

  test('none taken holds none, one holds one, all hold all', () => {
    fc.assert(
      fc.property(counts, (plants) => {
        expect(rarefiedDonors(plants, 0)).toBeCloseTo(0, 14);
        expect(rarefiedDonors(plants, 1)).toBeCloseTo(1, 12);
        expect(rarefiedDonors(plants, plants.reduce((a, b) => a + b))).toBe(plants.filter((n) => n > 0).length);
      }),
    );
  });

  test('one more plant brings something, and never more than the one before it did', () => {
    fc.assert(
      fc.property(draw, ([plants, taken]) => {
        const [before, now] = [rarefiedDonors(plants, taken - 1), rarefiedDonors(plants, taken)];
        expect(now - before).toBeGreaterThanOrEqual(-1e-10);
        if (taken > 1) expect(now - before).toBeLessThanOrEqual(before - rarefiedDonors(plants, taken - 2) + 1e-10);
      }),
    );
  });

  test.each([
    ['diversity/no-plants', [0], 0],
    ['diversity/not-a-count', [3, -1], 1],
    ['diversity/not-a-count', [3], -1],
    ['diversity/not-a-count', [3], 1.5],
    ['diversity/not-a-count', [3], Number.NaN],
    ['diversity/more-than-there-are', [3, 2], 6],
  ])('answers %s for %d taken', (code, plants, taken) => {
    expect(() => rarefiedDonors(plants, taken)).toThrow(expect.objectContaining({ name: 'DomainError', code }));
  });
});

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fisherExact } from './fisher-exact.ts';
import { holm } from './holm.ts';
import { mantelHaenszel } from './mantel-haenszel.ts';
import { overdispersion } from './overdispersion.ts';
import type { TwoByTwo } from './two-by-two.ts';

const table = (a: number, b: number, c: number, d: number): TwoByTwo => ({ first: { yes: a, no: b }, second: { yes: c, no: d } });
const tables = fc.tuple(fc.nat(40), fc.nat(40), fc.nat(40), fc.nat(40)).map(([a, b, c, d]) => table(a + 1, b + 1, c + 1, d + 1));

describe('Fisher’s exact test', () => {
  // Fisher RA (1935) The Design of Experiments: eight cups of tea, milk first told right in three of four. One-sided 17/70, two-sided 34/70.
  test('the tea', () => {
    const { chance, oddsRatio } = fisherExact(table(3, 1, 1, 3));
    expect(chance).toBeCloseTo(34 / 70, 12);
    // The mean at odds w is 3: 16 w + 72 w^2 + 48 w^3 + 4 w^4 = 3 (1 + 16 w + 36 w^2 + 16 w^3 + w^4). R prints 6.408309, good to four digits; from memory.
    expect(Math.abs(oddsRatio - 6.408309)).toBeLessThan(5e-5);
    expect(oddsRatio ** 4 - 36 * oddsRatio ** 2 - 32 * oddsRatio - 3).toBeCloseTo(0, 8);
  });

  test('worked by hand: all of two against none of two is one of six tables, on either side', () => {
    const { chance, oddsRatio, lower, upper } = fisherExact(table(2, 0, 0, 2));
    expect(chance).toBeCloseTo(2 / 6, 12);
    expect([oddsRatio, upper]).toEqual([Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY]);
    // Chance of two at odds w: w^2 / (1 + 4 w + w^2) is 0.025.
    expect(lower ** 2 / (1 + 4 * lower + lower ** 2)).toBeCloseTo(0.025, 10);
  });

  test('worked by hand: tables on both sides of the likeliest', () => {
    // Margins 3 + 5, 4 yes: chances of 0, 1, 2, 3 in the first are 5, 30, 30, 5 of 70.
    const of = (a: number) => fisherExact(table(a, 3 - a, 4 - a, 1 + a)).chance;
    [10, 70, 70, 10].forEach((ways, a) => expect(of(a)).toBeCloseTo(ways / 70, 12));
    // Margins 2 + 4, 3 yes: 4, 12, 4 of 20.
    [8, 20, 8].forEach((ways, a) => expect(fisherExact(table(a, 2 - a, 3 - a, 1 + a)).chance).toBeCloseTo(ways / 20, 12));
    // Margins 4 + 6, 2 yes: 15, 24, 6 of 45.
    [21, 45, 6].forEach((ways, a) => expect(fisherExact(table(a, 4 - a, 2 - a, 4 + a)).chance).toBeCloseTo(ways / 45, 12));
  });

  test('an empty cell leaves one limit open and the other where its chance is a fortieth', () => {
    // None of two against one of two, one success in all: 1 / (1 + odds) is 0.025 at 39.
    const { oddsRatio, lower, upper } = fisherExact(table(0, 2, 1, 1));
    expect([oddsRatio, lower]).toEqual([0, 0]);
    expect(upper).toBeCloseTo(39, 8);
    const turned = fisherExact(table(1, 1, 0, 2));
    expect([turned.oddsRatio, turned.upper]).toEqual([Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY]);
    expect(turned.lower).toBeCloseTo(1 / 39, 10);
  });

  test('more plants than can be walked through are refused, ten thousand million are not', () => {
    expect(() => fisherExact(table(5e9, 5e9, 1, 1))).toThrow(expect.objectContaining({ code: 'survival/not-a-count' }));
    expect(fisherExact(table(1, 4e9, 1, 4e9)).chance).toBeCloseTo(1, 9);
  });

  test('groups and ends the other way round give the same chance and the turned ratio', () => {
    fc.assert(fc.property(tables, (one) => {
      const there = fisherExact(one);
      const back = fisherExact({ first: one.second, second: one.first });
      expect(back.chance).toBeCloseTo(there.chance, 9);
      expect(back.oddsRatio).toBeCloseTo(1 / there.oddsRatio, 6);
      expect(there.lower).toBeLessThanOrEqual(there.oddsRatio);
      expect(there.upper).toBeGreaterThanOrEqual(there.oddsRatio);
    }), { numRuns: 60 });
  });

  test.each([[table(0, 0, 3, 1)], [table(3, 1, 0, 0)], [table(2, 0, 3, 0)], [table(0, 2, 0, 3)], [table(-1, 2, 3, 4)], [table(1.5, 2, 3, 4)]])('no answer is a refusal', (one) => expect(() => fisherExact(one)).toThrow(expect.objectContaining({ code: expect.stringMatching(/^(comparison\/nothing|survival\/not-a-count)/) })));
});

describe('Cochran-Mantel-Haenszel', () => {
  // UC Berkeley admissions 1973 (Bickel PJ et al. 1975 Science 187:398-404), as R's data set UCBAdmissions: men and women admitted and rejected by department.
  const BERKELEY = [table(512, 313, 89, 19), table(353, 207, 17, 8), table(120, 205, 202, 391), table(138, 279, 131, 244), table(53, 138, 94, 299), table(22, 351, 24, 317)];
  test('Berkeley admissions: together men seem favoured, department by department they are not', () => {
    const { chiSquare, chance, oddsRatio, lower, upper } = mantelHaenszel(BERKELEY);
    // R's mantelhaen.test(UCBAdmissions) prints 1.4269, p 0.2323, odds ratio 0.9046968, 0.7719074 to 1.0603298; from memory.
    expect(chiSquare).toBeCloseTo(1.4269, 4);
    expect(chance).toBeCloseTo(0.2323, 4);
    expect(oddsRatio).toBeCloseTo(0.9046968, 6);
    expect(lower).toBeCloseTo(0.7719074, 6);
    expect(upper).toBeCloseTo(1.0603298, 6);
  });

  // Hoblyn TN, Palmer RC (1934), as printed in Bartlett MS (1935) J. R. Stat. Soc. Suppl. 2:248-252: plum root cuttings alive of 240; from memory.
  test('plum root cuttings: planted at once more live than in spring, long ones and short ones alike', () => {
    const { oddsRatio, lower, chance } = mantelHaenszel([table(156, 84, 84, 156), table(107, 133, 31, 209)]);
    // By hand: (156*156 + 107*209) / (84*84 + 133*31).
    expect(oddsRatio).toBeCloseTo((156 * 156 + 107 * 209) / (84 * 84 + 133 * 31), 10);
    expect(lower).toBeGreaterThan(3);
    expect(chance).toBeLessThan(1e-15);
  });

  test('worked by hand: one stratum without correction', () => {
    // Expected 2, variance 4*4*4*4 / (64 * 7).
    expect(mantelHaenszel([table(3, 1, 1, 3)], { isCorrected: false }).chiSquare).toBeCloseTo(1 / (256 / 448), 12);
  });

  test('a stratum with one group only, or in another order, changes nothing; the correction never finds more', () => {
    fc.assert(fc.property(fc.array(tables, { minLength: 1, maxLength: 5 }), (strata) => {
      const plain = mantelHaenszel(strata, { isCorrected: false });
      expect(mantelHaenszel([...strata, table(4, 2, 0, 0), table(3, 0, 5, 0)].reverse(), { isCorrected: false }).chiSquare).toBeCloseTo(plain.chiSquare, 8);
      expect(mantelHaenszel(strata).chiSquare).toBeLessThanOrEqual(plain.chiSquare);
      expect(mantelHaenszel(strata.map(({ first, second }) => ({ first: second, second: first })), { isCorrected: false }).oddsRatio).toBeCloseTo(1 / plain.oddsRatio, 8);
    }));
  });

  test('the correction takes a half, or nothing of less than a half', () => {
    // Gap 1, variance 4/7 as above: (1/2)^2 over it. Gap 0.2 (1 - 2 x 2 / 5), variance 2 x 3 x 2 x 3 / (25 x 4).
    expect(mantelHaenszel([table(3, 1, 1, 3)]).chiSquare).toBeCloseTo(0.25 / (4 / 7), 12);
    expect(mantelHaenszel([table(1, 1, 1, 2)]).chiSquare).toBeCloseTo(0.04 / 0.36, 12);
    expect(mantelHaenszel([table(1, 1, 0, 2)]).chiSquare).toBe(0);
  });

  test('limits of one stratum, worked by hand, at any confidence', () => {
    // Robins-Breslow-Greenland of one table is Woolf's variance, 1/3 + 1/1 + 1/1 + 1/3.
    const { lower, upper } = mantelHaenszel([table(3, 1, 1, 3)], { confidence: 0.8 });
    expect(Math.log(upper! / 9)).toBeCloseTo(1.2815515655446004 * Math.sqrt(8 / 3), 9);
    expect(lower! * upper!).toBeCloseTo(81, 9);
  });

  test('one side empty: the odds have no end, and no limits', () => {
    expect(mantelHaenszel([table(2, 0, 1, 1)])).toMatchObject({ oddsRatio: Number.POSITIVE_INFINITY });
    expect(mantelHaenszel([table(0, 2, 1, 1)])).toMatchObject({ oddsRatio: 0 });
    expect(mantelHaenszel([table(0, 2, 1, 1)])).not.toHaveProperty('lower');
  });

  test('strata that tell nothing are refused', () => expect(() => mantelHaenszel([table(1, 0, 2, 0)])).toThrow(expect.objectContaining({ code: 'comparison/nothing-to-compare' })));
});

describe('many at once', () => {
  test('worked by hand', () => expect(holm([0.01, 0.04, 0.03])).toEqual([expect.closeTo(0.03, 12), expect.closeTo(0.06, 12), expect.closeTo(0.06, 12)]));
  test('keeps the order, and never goes below what came in', () => {
    fc.assert(fc.property(fc.array(fc.double({ min: 0, max: 1, noNaN: true })), (chances) => {
      const corrected = holm(chances);
      corrected.forEach((chance, at) => {
        expect(chance).toBeGreaterThanOrEqual(chances[at]!);
        corrected.forEach((other, elsewhere) => chances[at]! < chances[elsewhere]! && expect(chance).toBeLessThanOrEqual(other));
      });
    }));
  });
  test('no chance is refused', () => expect(() => holm([0.2, 1.2])).toThrow(expect.objectContaining({ code: 'numbers/not-a-share' })));
});

describe('spread between donor trees', () => {
  test('worked by hand: 8 and 2 of 10 each', () => {
    const { factor, freedom, chance } = overdispersion([{ successes: 8, plants: 10 }, { successes: 2, plants: 10 }]);
    expect([factor, freedom]).toEqual([expect.closeTo(7.2, 12), 1]);
    expect(chance).toBeCloseTo(0.00729, 5);
  });
  test('of three trees is a mean over two, and a tree without plants is none', () => {
    // 0, 2 and 4 of 4: each outer one lies 2 from its mean, 4 / (4 x 1/4) each.
    const { factor, freedom } = overdispersion([0, 2, 4].map((successes) => ({ successes, plants: 4 })).concat({ successes: 0, plants: 0 }));
    expect([factor, freedom]).toEqual([expect.closeTo(4, 12), 2]);
  });
  test.each([[[{ successes: 2, plants: 2 }, { successes: 3, plants: 3 }], 'comparison/nothing-to-compare'], [[{ successes: 1, plants: 2 }], 'survival/too-few-donors'], [[{ successes: 0, plants: 2 }, { successes: 0, plants: 3 }], 'comparison/nothing-to-compare']])('%j is refused', (outcomes, code) => expect(() => overdispersion(outcomes)).toThrow(expect.objectContaining({ code })));
});

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fitVaryingChance } from './varying-chance-fit.ts';

describe('a chance drawn towards a prior', () => {
  const PRIOR = { mean: 0.4, likeness: 0.2, plants: 10 };
  const of10 = (...successes: number[]) => successes.map((n) => ({ successes: n, plants: 10 }));

  test('worked by hand: 25 of 50 with a prior of 4 in 10; the trees’ spread of 3.6 is 2.6 more than chance, of 9 that could be', () => {
    expect(fitVaryingChance(of10(8, 8, 2, 2, 5), PRIOR)).toEqual({ mean: 29 / 60, likeness: expect.closeTo(2.6 / 9, 12), donors: 5, ownWeight: 50 / 60 });
  });
  test('is the prior where nothing is known, keeps its likeness below five trees, and never goes below nothing', () => {
    expect(fitVaryingChance([], PRIOR)).toEqual({ mean: 0.4, likeness: 0.2, donors: 0, ownWeight: 0 });
    expect(fitVaryingChance(of10(10, 0), PRIOR).likeness).toBe(0.2);
    expect(fitVaryingChance(of10(5, 5, 5, 5, 5), PRIOR).likeness).toBe(0);
  });
  test('lies between the prior and the programme’s own', () => {
    fc.assert(fc.property(fc.array(fc.nat(10), { minLength: 1, maxLength: 20 }), (successes) => {
      const own = successes.reduce((a, b) => a + b) / (10 * successes.length);
      const { mean } = fitVaryingChance(of10(...successes), PRIOR);
      expect(mean).toBeGreaterThanOrEqual(Math.min(own, PRIOR.mean) - 1e-12);
      expect(mean).toBeLessThanOrEqual(Math.max(own, PRIOR.mean) + 1e-12);
    }));
  });
  test('trees of which all or none root say nothing of how much trees differ, nor do trees that gave one cutting each', () => {
    expect(fitVaryingChance(of10(10, 10, 10, 10, 10), PRIOR)).toMatchObject({ mean: 54 / 60, likeness: 0.2 });
    expect(fitVaryingChance(of10(0, 0, 0, 0, 0), PRIOR)).toMatchObject({ mean: 4 / 60, likeness: 0.2 });
    expect(fitVaryingChance([0, 1, 0, 1, 1].map((successes) => ({ successes, plants: 1 })), PRIOR).likeness).toBe(0.2);
  });
  test('a tree without plants is no tree', () => {
    const some = of10(8, 8, 2, 2, 5);
    expect(fitVaryingChance([...some, { successes: 0, plants: 0 }], PRIOR)).toEqual(fitVaryingChance(some, PRIOR));
  });
  test.each([[of10(11), PRIOR, 'survival/not-a-count'], [[], { ...PRIOR, plants: 0 }, 'numbers/not-a-size'], [[], { ...PRIOR, plants: Infinity }, 'numbers/not-a-size'], [[], { ...PRIOR, mean: 2 }, 'numbers/not-a-share']])('%j with %j is refused', (outcomes, prior, code) => {
    expect(() => fitVaryingChance(outcomes, prior)).toThrow(expect.objectContaining({ code }));
  });
});

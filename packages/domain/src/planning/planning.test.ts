import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { betaBinomial, chanceOfNone } from '../distribution/beta-binomial.ts';
import { diceOf } from '../random/dice.ts';
import { propagulesNeeded } from './propagules-needed.ts';
import { planOf, stickingPlan } from './sticking-plan.ts';

describe('propagules needed', () => {
  test.each([[1000, [0.6, 0.9, 0.95], 1950, 1950], [500, [0.4, 0.85, 0.9, 0.95], 1720, 1725], [200, [0.36, 0.9, 0.95], 650, 653], [100, [0.5], 200, 200], [7, [], 7, 7]])('%d through %j, worked by hand', (target, rates, once, staged) => {
    expect(propagulesNeeded(target, rates, 'once')).toBe(once);
    expect(propagulesNeeded(target, rates, 'each-stage')).toBe(staged);
  });
  test('a stage that nothing survives, and a rate that nobody knows, have no number', () => {
    expect(() => propagulesNeeded(10, [0.5, 0], 'once')).toThrow(expect.objectContaining({ code: 'planning/impossible' }));
    expect(() => propagulesNeeded(10, [Number.NaN], 'once')).toThrow(expect.objectContaining({ code: 'numbers/not-a-share' }));
    expect(() => propagulesNeeded(1.5, [0.5], 'once')).toThrow(expect.objectContaining({ code: 'survival/not-a-count' }));
  });
  test('rounding at each stage never asks for less, and gives at least the target', () => {
    fc.assert(fc.property(fc.integer({ min: 1, max: 5000 }), fc.array(fc.double({ min: 0.05, max: 1, noNaN: true }), { maxLength: 5 }), (target, rates) => {
      const [once, staged] = [propagulesNeeded(target, rates, 'once'), propagulesNeeded(target, rates, 'each-stage')];
      expect(staged).toBeGreaterThanOrEqual(once);
      expect(once * rates.reduce((a, b) => a * b, 1)).toBeGreaterThanOrEqual(target * (1 - 1e-9));
    }));
  });
});

describe('chances that differ from tree to tree', () => {
  test('worked by hand: mean 1/2, likeness 1/3 is the even distribution', () => {
    expect(betaBinomial(4, { mean: 0.5, likeness: 1 / 3 })).toEqual(Array.from({ length: 5 }, () => expect.closeTo(1 / 5, 12)));
    expect(chanceOfNone(4, { mean: 0.5, likeness: 1 / 3 })).toBeCloseTo(1 / 5, 12);
    expect(betaBinomial(2, { mean: 0.25, likeness: 0 })).toEqual([expect.closeTo(9 / 16, 12), expect.closeTo(6 / 16, 12), expect.closeTo(1 / 16, 12)]);
  });
  test('add up to 1, keep their mean, and spread as the likeness says', () => {
    fc.assert(fc.property(fc.integer({ min: 1, max: 300 }), fc.double({ min: 0.01, max: 0.99, noNaN: true }), fc.double({ min: 0, max: 0.9, noNaN: true }), (n, mean, likeness) => {
      const chances = betaBinomial(n, { mean, likeness });
      expect(chances.reduce((a, b) => a + b)).toBeCloseTo(1, 9);
      const first = chances.reduce((sum, chance, k) => sum + k * chance, 0);
      expect(first / n).toBeCloseTo(mean, 8);
      const variance = chances.reduce((sum, chance, k) => sum + (k - first) ** 2 * chance, 0);
      expect(variance / (n * mean * (1 - mean) * (1 + (n - 1) * likeness))).toBeCloseTo(1, 6);
    }), { numRuns: 60 });
  });
});

describe('a sticking plan', () => {
  test('worked by hand: two trees, one plant of each, each cutting a coin: three cuttings of each give (7/8)^2', () => {
    expect(stickingPlan({ plants: 2, donors: 2 }, 2, { mean: 0.5, likeness: 0 }, 0.75)).toMatchObject({ cuttingsPerDonor: 3, cuttings: 6, chance: expect.closeTo(49 / 64, 10), expectedDonors: expect.closeTo(7 / 4, 10) });
  });

  test('agrees with dice', () => {
    const [target, trees, each, chance] = [{ plants: 40, donors: 9 }, 12, 10, { mean: 0.4, likeness: 0.2 }] as const;
    const dice = diceOf(20261010);
    const chances = betaBinomial(each, chance);
    const throwOne = (): number => {
      let left = dice();
      return chances.findIndex((one) => (left -= one) < 0);
    };
    let reached = 0;
    const runs = 20_000;
    for (let run = 0; run < runs; run += 1) {
      const plants = Array.from({ length: trees }, throwOne);
      if (plants.reduce((a, b) => a + b) >= target.plants && plants.filter((n) => n > 0).length >= target.donors) reached += 1;
    }
    // Four standard errors of the dice.
    expect(Math.abs(reached / runs - planOf(target, trees, chance, each).chance)).toBeLessThan(4 * Math.sqrt(0.25 / runs));
  });

  test('is the fewest that do, and trees that differ need more', () => {
    fc.assert(fc.property(fc.integer({ min: 1, max: 60 }), fc.integer({ min: 0, max: 6 }), fc.double({ min: 0.2, max: 0.9, noNaN: true }), (plants, donors, mean) => {
      const plan = stickingPlan({ plants, donors }, 8, { mean, likeness: 0.1 });
      expect(plan.chance).toBeGreaterThanOrEqual(0.8);
      if (plan.cuttingsPerDonor > 1) expect(planOf({ plants, donors }, 8, { mean, likeness: 0.1 }, plan.cuttingsPerDonor - 1).chance).toBeLessThan(0.8);
      expect(stickingPlan({ plants, donors }, 8, { mean, likeness: 0.4 }).cuttingsPerDonor).toBeGreaterThanOrEqual(plan.cuttingsPerDonor);
    }), { numRuns: 40 });
  });

  test.each([[{ plants: 5, donors: 3 }, 2, { mean: 0.5, likeness: 0 }, 'planning/too-few-trees'], [{ plants: 5, donors: 1 }, 2, { mean: 0, likeness: 0 }, 'planning/impossible'], [{ plants: 5, donors: 1 }, 2, { mean: 0.5, likeness: 1 }, 'numbers/not-a-share'], [{ plants: -5, donors: 1 }, 2, { mean: 0.5, likeness: 0 }, 'survival/not-a-count']])('%j of %d trees at %j is refused', (target, trees, chance, code) => {
    expect(() => stickingPlan(target, trees, chance)).toThrow(expect.objectContaining({ code }));
  });
});

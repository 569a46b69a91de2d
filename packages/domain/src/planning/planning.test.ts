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
    expect(() => propagulesNeeded(10, [1e-300], 'each-stage')).toThrow(expect.objectContaining({ code: 'planning/impossible' }));
    for (const rate of [Number.NaN, -0.1, 1.1]) expect(() => propagulesNeeded(10, [rate], 'once')).toThrow(expect.objectContaining({ code: 'numbers/not-a-share' }));
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

  test('a confidence that is just reached is reached: one cutting at even odds, three for seven in eight', () => {
    const even = { mean: 0.5, likeness: 0 };
    expect(stickingPlan({ plants: 1, donors: 1 }, 1, even, 0.5).cuttingsPerDonor).toBe(1);
    expect(stickingPlan({ plants: 1, donors: 1 }, 1, even, 0.875).cuttingsPerDonor).toBe(3);
  });

  test('one in a thousand roots, or one in 1,242: up to 2,000 cuttings of a tree are asked for, and no more', () => {
    // For four in five, ln(1/5) / ln(1 - chance): 1,608.6; 1,998.1; and 2,011.
    const fewest = (mean: number) => stickingPlan({ plants: 1, donors: 1 }, 1, { mean, likeness: 0 }).cuttingsPerDonor;
    expect(fewest(1 / 1_000)).toBe(1_609);
    expect(fewest(1 / 1_242)).toBe(1_999);
    expect(() => fewest(1 / 1_250)).toThrow(expect.objectContaining({ code: 'planning/impossible' }));
  });

  test('of no tree, no cutting, or one that never roots, nothing is reached but nothing', () => {
    const reached = (plants: number, donors: number, trees = 3, mean = 0.5, each = 0) => planOf({ plants, donors }, trees, { mean, likeness: 0 }, each).chance;
    for (const [trees, mean, each] of [[3, 0.5, 0], [3, 0, 5], [0, 0.5, 5]] as const) {
      expect([reached(0, 0, trees, mean, each), reached(1, 0, trees, mean, each), reached(0, 1, trees, mean, each), reached(1, 1, trees, mean, each)]).toEqual([1, 0, 0, 0]);
    }
  });

  test('what is expected, worked by hand: of three trees, two cuttings each, every fourth roots', () => {
    expect(planOf({ plants: 0, donors: 0 }, 3, { mean: 0.25, likeness: 0 }, 2)).toEqual({ cuttingsPerDonor: 2, cuttings: 6, chance: expect.closeTo(1, 12), expectedPlants: 1.5, expectedDonors: expect.closeTo(3 * (7 / 16), 12) });
  });

  test('a million of anything can be planned, one more cannot', () => {
    const [most, likely] = [1e6, { mean: 0.5, likeness: 0 }];
    expect(planOf({ plants: most, donors: 0 }, most, likely, 0)).toMatchObject({ cuttings: 0, chance: 0 });
    for (const [plants, trees, each] of [[most + 1, 1, 1], [0, most + 1, 1], [0, 1, most + 1]] as const) {
      expect(() => planOf({ plants, donors: 0 }, trees, likely, each)).toThrow(expect.objectContaining({ code: 'survival/not-a-count' }));
    }
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

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { betaBinomial } from '../distribution/beta-binomial.ts';
import { afterLaterStages } from './after-later-stages.ts';
import { expectedOfLines } from './expected-of-lines.ts';
import { planForTarget } from './plan-for-target.ts';
import { stickingPlan } from './sticking-plan.ts';

describe('after later stages', () => {
  test('worked by hand: half root, likeness 1/5, four in five come through', () => {
    // Covariance (4/5)^2 x 1/5 x 1/4 = 4/125, variance 2/5 x 3/5 = 6/25: 2/15.
    expect(afterLaterStages({ mean: 0.5, likeness: 0.2 }, [0.8])).toEqual({ mean: 0.4, likeness: expect.closeTo(2 / 15, 12) });
  });
  test('nothing after it changes nothing, and trees that fare as they like still do', () => {
    expect(afterLaterStages({ mean: 0.3, likeness: 0.1 }, [])).toEqual({ mean: 0.3, likeness: expect.closeTo(0.1, 12) });
    expect(afterLaterStages({ mean: 0.3, likeness: 0 }, [0.5, 0.5]).likeness).toBe(0);
    expect(afterLaterStages({ mean: 1, likeness: 0 }, [1])).toEqual({ mean: 1, likeness: 0 });
  });
  test('two steps are one step of their product, and trees never grow more alike', () => {
    const share = fc.double({ min: 0.01, max: 1, noNaN: true });
    fc.assert(fc.property(fc.double({ min: 0.01, max: 0.99, noNaN: true }), fc.double({ min: 0, max: 0.9, noNaN: true }), share, share, (mean, likeness, one, other) => {
      const twice = afterLaterStages(afterLaterStages({ mean, likeness }, [one]), [other]);
      const once = afterLaterStages({ mean, likeness }, [one * other]);
      expect(twice.likeness).toBeCloseTo(once.likeness, 10);
      expect(once.likeness).toBeLessThanOrEqual(likeness + 1e-12);
    }));
  });
  test('a stage that nothing comes through is the end of all', () => expect(afterLaterStages({ mean: 0.5, likeness: 0.2 }, [0.9, 0])).toEqual({ mean: 0, likeness: 0 }));
  test.each([[Number.NaN], [-0.1], [1.1]])('a share of %d is refused', (share) => {
    expect(() => afterLaterStages({ mean: 0.5, likeness: 0 }, [0.9, share])).toThrow(expect.objectContaining({ code: 'numbers/not-a-share' }));
  });
});

describe('what lines will bring', () => {
  test('worked by hand: two trees, a cutting of each, every second one roots', () => {
    // 0, 1, 2 plants by 1/4, 1/2, 1/4: nine in ten of the time from 0 to 2, half the time just 1.
    const half = { mean: 0.5, likeness: 0 };
    expect(expectedOfLines([1, 1], half, 0.9).plants).toEqual({ expected: 1, lower: 0, upper: 2 });
    expect(expectedOfLines([1, 1], half, 0.4).donors).toEqual({ expected: 1, lower: 1, upper: 1 });
    // What lies outside may be just as much as the limits leave: a quarter on either side.
    expect(expectedOfLines([1, 1], half, 0.5).plants).toEqual({ expected: 1, lower: 1, upper: 1 });
    // 0, 1, 2, 3 by 1/8, 3/8, 3/8, 1/8.
    expect(expectedOfLines([1, 1, 1], half, 0.7)).toEqual({ plants: { expected: 1.5, lower: 1, upper: 2 }, donors: { expected: 1.5, lower: 1, upper: 2 } });
    expect(expectedOfLines([1, 1, 1], half, 0.8).plants).toEqual({ expected: 1.5, lower: 0, upper: 3 });
  });
  test('worked by hand: trees so alike that any number is as likely as another, added up to 3,000 cuttings and by the normal beyond', () => {
    const even = { mean: 0.5, likeness: 1 / 3 };
    // 3,001 numbers from 0 on, 300 of them in the lowest tenth; beyond, 1,500.5 give or take 1.2816 x sqrt(3,001 / 4 x (1 + 3,000 / 3)).
    expect(expectedOfLines([3_000], even).plants).toEqual({ expected: 1_500, lower: 300, upper: 2_700 });
    expect(expectedOfLines([3_001], even).plants).toEqual({ expected: 1_500.5, lower: 389, upper: 2_612 });
  });
  test('a cutting that is the only one of its tree is like no other: 3,600 of them vary by 30, however alike those of one tree fare', () => {
    const { plants, donors } = expectedOfLines(Array<number>(3_600).fill(1), { mean: 0.5, likeness: 0.5 });
    expect(plants).toEqual({ expected: 1_800, lower: Math.floor(1_800 - 1.2815515655 * 30), upper: Math.ceil(1_800 + 1.2815515655 * 30) });
    expect(donors.expected).toBeCloseTo(1_800, 8);
  });
  test('a chance of nothing brings nothing, a certain one all', () => {
    for (const n of [7, 4_000]) {
      expect(expectedOfLines([n], { mean: 0, likeness: 0 })).toEqual({ plants: { expected: 0, lower: 0, upper: 0 }, donors: { expected: 0, lower: 0, upper: 0 } });
      expect(expectedOfLines([n], { mean: 1, likeness: 0 })).toEqual({ plants: { expected: n, lower: n, upper: n }, donors: { expected: 1, lower: 1, upper: 1 } });
    }
  });
  test('what is lost is what is left over: its limits are the mirror', () => {
    fc.assert(fc.property(fc.array(fc.integer({ min: 1, max: 12 }), { minLength: 1, maxLength: 5 }), fc.double({ min: 0.05, max: 0.95, noNaN: true }), fc.constantFrom(0, 0.2), (lines, mean, likeness) => {
      const all = lines.reduce((a, b) => a + b);
      const [kept, lost] = [expectedOfLines(lines, { mean, likeness }).plants, expectedOfLines(lines, { mean: 1 - mean, likeness }).plants];
      expect([all - lost.upper, all - lost.lower]).toEqual([kept.lower, kept.upper]);
    }), { numRuns: 60 });
  });
  test('one tree is its own distribution: the middle 80 % of 12 with chance 1/4', () => {
    const chances = betaBinomial(12, { mean: 0.25, likeness: 0.3 });
    const { plants } = expectedOfLines([12], { mean: 0.25, likeness: 0.3 });
    const below = chances.slice(0, plants.lower).reduce((a, b) => a + b, 0);
    const above = chances.slice(plants.upper + 1).reduce((a, b) => a + b, 0);
    expect(below).toBeLessThanOrEqual(0.1);
    expect(above).toBeLessThanOrEqual(0.1 + 1e-9);
    expect(below + (chances[plants.lower] ?? 0)).toBeGreaterThan(0.1);
  });
  test('by adding up and by the normal it is nearly the same', () => {
    const [exact, near] = [Array<number>(60).fill(50), Array<number>(60).fill(51)].map((lines) => expectedOfLines(lines, { mean: 0.4, likeness: 0.1 }).plants);
    expect(near?.lower).toBeCloseTo((exact?.lower ?? 0) * 1.02, -1);
    expect(near?.upper).toBeCloseTo((exact?.upper ?? 0) * 1.02, -1);
  });
  test('limits hold what is expected, alike trees are further apart, and nothing brings nothing', () => {
    expect(expectedOfLines([], { mean: 0.5, likeness: 0 }).plants).toEqual({ expected: 0, lower: 0, upper: 0 });
    fc.assert(fc.property(fc.array(fc.integer({ min: 1, max: 30 }), { minLength: 1, maxLength: 8 }), fc.double({ min: 0.05, max: 0.95, noNaN: true }), (lines, mean) => {
      const [apart, alike] = [expectedOfLines(lines, { mean, likeness: 0 }), expectedOfLines(lines, { mean, likeness: 0.5 })];
      expect(alike.donors.expected).toBeLessThanOrEqual(apart.donors.expected + 1e-9);
      expect(apart.plants.lower).toBeLessThanOrEqual(Math.ceil(apart.plants.expected));
      expect(apart.plants.upper).toBeGreaterThanOrEqual(Math.floor(apart.plants.expected));
      expect(alike.plants.upper).toBeLessThanOrEqual(lines.reduce((a, b) => a + b));
    }), { numRuns: 60 });
  });
  test.each([[[2.5], 0.8, 'survival/not-a-count'], [[2], 1, 'survival/not-a-level']] as const)('%j at %d answers %s', (lines, level, code) => {
    expect(() => expectedOfLines(lines, { mean: 0.5, likeness: 0 }, level)).toThrow(expect.objectContaining({ code }));
  });
});

describe('a plan for a target', () => {
  test('worked by hand: two plants of two trees, each cutting roots by half and nothing is lost after it', () => {
    const { bets, needed, toEnd } = planForTarget({ plants: 2, donors: 2 }, 2, { mean: 0.5, likeness: 0 }, [1], 0.8);
    // Both trees need one: (1 - 1/2^n)^2 is 0.77 at three cuttings and 0.88 at four.
    expect(bets?.asPlanned).toMatchObject({ trees: 2, cuttingsPerDonor: 4, cuttings: 8, chance: expect.closeTo((15 / 16) ** 2, 12) });
    expect(toEnd).toEqual({ mean: 0.5, likeness: 0 });
    expect(needed).toEqual({ once: 4, eachStage: 4, stages: [4, 2] });
  });
  test('names both roundings, worked by hand: 7 wanted, 0.36, 0.9, 0.95', () => {
    // 7 / 0.3078 = 22.7; at each stage 7 / 0.95 = 7.4, so 8; 8 / 0.9 = 8.9, so 9; 9 / 0.36 = 25.
    expect(planForTarget({ plants: 7, donors: 1 }, 3, { mean: 0.36, likeness: 0.1 }, [0.9, 0.95], 0.8).needed).toEqual({ once: 23, eachStage: 25, stages: [25, 9, 8] });
  });
  test('is what a sticking plan for the same chance is', () => {
    const { bets, toEnd } = planForTarget({ plants: 40, donors: 6 }, 10, { mean: 0.4, likeness: 0.17 }, [0.9], 0.9);
    expect(bets?.asPlanned.cuttingsPerDonor).toBe(stickingPlan({ plants: 40, donors: 6 }, 10, toEnd, 0.9).cuttingsPerDonor);
  });
  test.each([['planning/too-few-trees', 12, 0.5], ['planning/impossible', 3, 0]])('no answer is an answer: %s', (refused, donors, mean) => {
    const plan = planForTarget({ plants: 10, donors }, 3, { mean, likeness: 0 }, [0.9], 0.8);
    expect(plan.refused).toBe(refused);
    expect(plan.bets).toBeUndefined();
    expect(plan.needed === undefined).toBe(mean === 0);
  });
  test('a question that is no question is none of these answers', () => {
    expect(() => planForTarget({ plants: 10, donors: 1 }, 3, { mean: 0.5, likeness: 0 }, [0.9], 1)).toThrow(expect.objectContaining({ code: 'survival/not-a-level' }));
  });
});

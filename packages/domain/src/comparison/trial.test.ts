import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { diceOf } from '../random/dice.ts';
import { mantelHaenszel } from './mantel-haenszel.ts';
import { randomisedBlocks } from './randomised-blocks.ts';
import { trialPower } from './trial-power.ts';
import { trialVerdict } from './trial-verdict.ts';
import { tells } from './two-by-two.ts';

describe('randomised complete blocks', () => {
  test('hold each recipe as often in each block, the same for the same seed, and can carry their question', () => {
    fc.assert(fc.property(fc.integer({ min: 2, max: 5 }), fc.integer({ min: 2, max: 12 }), fc.integer({ min: 1, max: 3 }), fc.integer(), (recipes, donors, repeats, seed) => {
      const names = Array.from({ length: recipes }, (_, at) => `recipe ${at}`);
      const trees = Array.from({ length: donors }, (_, at) => `CR-${at}`);
      const blocks = randomisedBlocks(names, trees, repeats, diceOf(seed));
      for (const { order } of blocks) for (const name of names) expect(order.filter((one) => one === name)).toHaveLength(repeats);
      expect(randomisedBlocks(names, trees, repeats, diceOf(seed))).toEqual(blocks);
      const rows = blocks.flatMap(({ block, order }) => order.map((arm) => ({ arm, plants: 1, donor: block, bench: '1', day: '1', team: '1', tray: '1' })));
      expect(trialVerdict(rows).mayCompare).toBe(true);
    }), { numRuns: 30 });
  });
  test.each([[['one'], ['a', 'b'], 1], [['one', 'one'], ['a', 'b'], 1], [['one', 'one', 'two'], ['a', 'b'], 1], [['one', 'two'], ['a', 'b'], 1.5], [['one', 'two'], ['a'], 1], [['one', 'two'], ['a', 'b'], 0]])('%j on %j, %d times, is refused', (recipes, donors, repeats) => expect(() => randomisedBlocks(recipes, donors, repeats, diceOf(1))).toThrow());
});

describe('power', () => {
  const usual = { mean: 0.4, likeness: 0.1 };
  test('without a difference a trial finds one as seldom as its level says, or less', () => {
    const { power, error } = trialPower({ donors: 10, cuttingsEach: 12 }, usual, 1, diceOf(1), 0.05, 600);
    expect(power).toBeLessThanOrEqual(0.05 + 4 * Math.max(error, 0.009));
  });
  // One stratum's worth of evidence: n per arm for 0.4 against 0.6 with 80 % at 5 % is about 97 (Fleiss JL 1981, without correction); from memory.
  test('comes near the textbook for independent plants', () => {
    const { power } = trialPower({ donors: 10, cuttingsEach: 11 }, { mean: 0.4, likeness: 0 }, 2.25, diceOf(5), 0.05, 600);
    expect(power).toBeGreaterThan(0.72);
    expect(power).toBeLessThan(0.92);
  });
  test('more trees find more', () => {
    const of = (donors: number) => trialPower({ donors, cuttingsEach: 6 }, usual, 2, diceOf(2), 0.05, 300).power;
    expect(of(20)).toBeGreaterThan(of(5));
  });
  /** Of a trial of two trees, all outcomes gone through: the chance of a tree integrated over its density, the other recipe multiplying its odds. */
  const exactPower = (n: number, density: (p: number) => number, odds: number) => {
    const counts = Array.from({ length: n + 1 }, (_, k) => k);
    const ways = counts.map((k) => counts.slice(0, k).reduce((all, _, at) => (all * (n - at)) / (at + 1), 1));
    const chance = (k: number, p: number) => ways[k]! * p ** k * (1 - p) ** (n - k);
    const grid = Array.from({ length: 400 }, (_, at) => (at + 0.5) / 400);
    const trees = counts.flatMap((yes) => counts.map((usually) => ({
      table: { first: { yes, no: n - yes }, second: { yes: usually, no: n - usually } },
      chance: grid.reduce((sum, p) => sum + (density(p) * chance(yes, (odds * p) / (1 - p + odds * p)) * chance(usually, p)) / 400, 0),
    })));
    return trees.reduce((sum, a) => sum + a.chance * trees.reduce((more, b) => {
      const strata = [a.table, b.table].filter(tells);
      return strata.length > 0 && mantelHaenszel(strata).chance < 0.05 ? more + b.chance : more;
    }, 0), 0);
  };

  // With a mean of 1/3 and a likeness of 1/4 the shapes are 1 and 2: a density of 2 (1 - p). With 1/2 and 1/3 every chance is as likely as any other.
  test.each([[1 / 3, 1 / 4, (p: number) => 2 * (1 - p)], [1 / 2, 1 / 3, () => 1]])('of two trees with a mean of %d and a likeness of %d it is what all outcomes add up to', (mean, likeness, density) => {
    const { power, error, runs } = trialPower({ donors: 2, cuttingsEach: 9 }, { mean, likeness }, 8, diceOf(8), 0.05, 3_000);
    expect(Math.abs(power - exactPower(9, density, 8))).toBeLessThan(3 * error);
    expect([error, runs]).toEqual([expect.closeTo(Math.sqrt((power * (1 - power)) / 3_000), 14), 3_000]);
  });

  test('what cannot fail is found in every run, and what cannot happen in none', () => {
    expect(trialPower({ donors: 20, cuttingsEach: 20 }, usual, 1e9, diceOf(1), 0.05, 1)).toEqual({ power: 1, error: 0, runs: 1 });
    for (const mean of [0, 1]) expect(trialPower({ donors: 4, cuttingsEach: 5 }, { mean, likeness: 0.1 }, 2, diceOf(1), 0.05, 20)).toEqual({ power: 0, error: 0, runs: 20 });
    expect(trialPower({ donors: 2, cuttingsEach: 1 }, usual, 2, diceOf(1), 0.05, 20).power).toBe(0);
  });

  test.each([[1, 5, 9, 'survival/not-a-count'], [2.5, 5, 9, 'survival/not-a-count'], [5, 0, 9, 'survival/not-a-count'], [5, 1.5, 9, 'survival/not-a-count'], [5, 5, 0, 'survival/not-a-count'], [5, 5, 1.5, 'survival/not-a-count']])('%d trees, %d cuttings, %d runs: refused', (donors, cuttingsEach, runs, code) => {
    expect(() => trialPower({ donors, cuttingsEach }, usual, 2, diceOf(1), 0.05, runs)).toThrow(expect.objectContaining({ code }));
  });
  test.each([0, -1, Number.POSITIVE_INFINITY, Number.NaN])('odds %d are refused', (odds) => expect(() => trialPower({ donors: 5, cuttingsEach: 5 }, usual, odds, diceOf(1))).toThrow(expect.objectContaining({ code: 'numbers/not-a-size' })));
});

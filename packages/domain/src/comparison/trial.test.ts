import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { diceOf } from '../random/dice.ts';
import { randomisedBlocks } from './randomised-blocks.ts';
import { trialPower } from './trial-power.ts';
import { trialVerdict } from './trial-verdict.ts';

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
  test.each([[['one'], ['a', 'b'], 1], [['one', 'one'], ['a', 'b'], 1], [['one', 'two'], ['a'], 1], [['one', 'two'], ['a', 'b'], 0]])('%j on %j, %d times, is refused', (recipes, donors, repeats) => expect(() => randomisedBlocks(recipes, donors, repeats, diceOf(1))).toThrow());
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
  test.each([[{ donors: 1, cuttingsEach: 5 }, 2], [{ donors: 5, cuttingsEach: 5 }, 0]])('%j with odds %d is refused', (design, odds) => expect(() => trialPower(design, usual, odds, diceOf(1))).toThrow());
});

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { diceOf } from '../random/dice.ts';
import { pooledSteps } from './pooled-steps.ts';
import { type Between, turnbull } from './turnbull.ts';

const between = (after: number, by: number, plants = 1): Between => ({ after, by, plants });
const NEVER = Number.POSITIVE_INFINITY;

describe('Turnbull’s estimate is the likeliest', () => {
  /** By how much the average log likelihood rises where a region is given more: 1 where it has what it wants, less where it wants none (Gentleman & Geyer 1994). */
  const pulls = (seen: readonly Between[], places: readonly { after: number; by: number }[]) => {
    const { regions } = turnbull(seen);
    const total = seen.reduce((sum, { plants }) => sum + plants, 0);
    const held = ({ after, by }: Between) => regions.reduce((sum, region) => (after <= region.after && region.by <= by ? sum + region.share : sum), 0);
    return places.map((place) => seen.reduce((sum, row) => (row.after <= place.after && place.by <= row.by ? sum + row.plants / held(row) / total : sum), 0));
  };
  const looks = fc.array(fc.tuple(fc.integer({ min: 0, max: 20 }), fc.integer({ min: 1, max: 12 }), fc.boolean(), fc.integer({ min: 1, max: 9 })).map(([after, more, isOpen, plants]) => between(after, isOpen ? NEVER : after + more, plants)), { minLength: 1, maxLength: 25 });

  test('no region with a share wants more or less, and no other place wants any', () => {
    fc.assert(fc.property(looks, (seen) => {
      for (const pull of pulls(seen, turnbull(seen).regions)) expect(pull).toBeCloseTo(1, 3);
      const days = Array.from({ length: 40 }, (_, day) => ({ after: day, by: day + 1 }));
      for (const pull of pulls(seen, days)) expect(pull).toBeLessThanOrEqual(1 + 1e-3);
    }), { numRuns: 60 });
  });

  test('hundreds of distinct intervals take tens of rounds', () => {
    const dice = diceOf(85);
    const seen = Array.from({ length: 300 }, () => {
      const after = Math.floor(dice() * 300);
      return between(after, dice() < 0.2 ? NEVER : after + 1 + Math.floor(dice() * 60), 1 + Math.floor(dice() * 9));
    });
    const { isConverged, iterations } = turnbull(seen, 2_000);
    expect(isConverged).toBe(true);
    expect(iterations).toBeLessThan(60);
  });

  test('one in a million keeps its place', () => {
    expect(turnbull([between(0, 1, 999_999), between(5, 6, 1)]).regions).toEqual([{ after: 0, by: 1, share: expect.closeTo(0.999999, 10) }, { after: 5, by: 6, share: expect.closeTo(1e-6, 10) }]);
  });

  test('stopped at once, it says so, and by how much the likelihood could still rise', () => {
    // Even shares at first: three of four plants want the first region half as much again.
    expect(turnbull([between(0, 1, 3), between(2, 3, 1)], 0)).toEqual({ regions: [{ after: 0, by: 1, share: 0.5 }, { after: 2, by: 3, share: 0.5 }], isConverged: false, iterations: 0, gap: 0.5 });
    expect(turnbull([between(0, 1, 3), between(2, 3, 1)])).toMatchObject({ isConverged: true, iterations: 1 });
  });

  test('shares add up to all there is, also where some next to nothing were left out', () => {
    fc.assert(fc.property(looks, (seen) => {
      expect(Math.abs(turnbull(seen).regions.reduce((sum, { share }) => sum + share, 0) - 1)).toBeLessThan(1e-13);
    }), { numRuns: 60 });
  });

  test.each([[between(0, 0)], [between(3, 2)], [between(Number.NaN, 2)], [between(-1, 2)]])('%j is no span of time', (row) => {
    expect(() => turnbull([between(0, 1), row])).toThrow(expect.objectContaining({ code: 'survival/not-a-time' }));
  });
});

describe('values made to rise', () => {
  test('worked by hand: what falls is pooled by weight, back to where it rises', () => {
    expect(pooledSteps([1, 3, 2, 4], [1, 1, 1, 1])).toEqual([1, 2.5, 2.5, 4]);
    expect(pooledSteps([1, 5, 2], [1, 1, 3])).toEqual([1, 11 / 4, 11 / 4]);
    // 4 and 3 make 3.5, which 1 pulls down to 8/3; 0 pulls all four to 2.
    expect(pooledSteps([4, 3, 1, 0, 7], [1, 1, 1, 1, 2])).toEqual([2, 2, 2, 2, 7]);
    expect(pooledSteps([], [])).toEqual([]);
    expect(pooledSteps([2, 2], [1, 5])).toEqual([2, 2]);
  });

  test('they rise, keep their weighted sum, and rising ones stay as they are', () => {
    fc.assert(fc.property(fc.array(fc.tuple(fc.integer({ min: -50, max: 50 }), fc.integer({ min: 1, max: 9 })), { maxLength: 20 }), (pairs) => {
      const [values, weights] = [pairs.map(([value]) => value), pairs.map(([, weight]) => weight)];
      const steps = pooledSteps(values, weights);
      steps.forEach((value, at) => expect(value).toBeGreaterThanOrEqual(steps[at - 1] ?? Number.NEGATIVE_INFINITY));
      const sum = (list: readonly number[]) => list.reduce((all, value, at) => all + value * weights[at]!, 0);
      expect(sum(steps)).toBeCloseTo(sum(values), 8);
      const sorted = [...values].sort((a, b) => a - b);
      expect(pooledSteps(sorted, weights)).toEqual(sorted);
    }));
  });
});

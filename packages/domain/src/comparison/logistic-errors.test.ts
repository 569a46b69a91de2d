import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { normalTail } from '../distribution/normal.ts';
import { logisticRegression, type LogisticRow } from './logistic-regression.ts';
import { logOdds, logShareAt, shareAt } from './log-odds.ts';

const row = (terms: number[], successes: number, plants: number, cluster: string): LogisticRow => ({ terms, successes, plants, cluster });
const logit = (share: number) => Math.log(share / (1 - share));

describe('errors by trees', () => {
  // Four plants of each tree. First arm: 1 and 3, information 8 x 1/4, scores -1 and 1. Second arm: 2 and 4, information 8 x 3/16, scores -1 and 1.
  const FOUR = [row([0], 1, 4, 'a'), row([0], 3, 4, 'b'), row([1], 2, 4, 'c'), row([1], 4, 4, 'd')];
  // Variance 2/4 + 2/(9/4), times 4/3 for trees and 15/14 for plants.
  const ERROR = Math.sqrt((1 / 2 + 8 / 9) * (4 / 3) * (15 / 14));

  test('of two arms of two trees, worked by hand, with Student’s t of three degrees in closed form', () => {
    const { terms: [start, arm], clusters, isFewClusters } = logisticRegression(FOUR);
    expect([clusters, isFewClusters]).toEqual([4, true]);
    expect(start).toMatchObject({ estimate: expect.closeTo(0, 12), standardError: expect.closeTo(Math.sqrt((1 / 2) * (10 / 7)), 10), chance: expect.closeTo(1, 10) });
    expect(arm).toMatchObject({ estimate: expect.closeTo(Math.log(3), 10), oddsRatio: expect.closeTo(3, 9), standardError: expect.closeTo(ERROR, 10), plainError: expect.closeTo(Math.sqrt(1 / 2 + 2 / 3), 10) });
    const t = Math.log(3) / ERROR / Math.sqrt(3);
    expect(arm!.chance).toBeCloseTo(1 - (2 / Math.PI) * (t / (1 + t * t) + Math.atan(t)), 10);
    // qt(0.975, 3), as printed in every table: 3.182.
    expect(Math.log(arm!.upper / 3)).toBeCloseTo(3.182446305 * ERROR, 8);
    expect(Math.log(arm!.lower / 3)).toBeCloseTo(-3.182446305 * ERROR, 8);
  });

  test('from thirty trees on are as the normal distribution has them', () => {
    // A third of all in one arm and half in the other, trees a plant apart from it.
    const of = (trees: number) => Array.from({ length: trees }, (_, at) => row([at % 2], (at % 2 === 0 ? 2 : 3) + (at % 4 < 2 ? 1 : -1), 6, `tree ${at}`));
    const { terms: [, arm], isFewClusters } = logisticRegression(of(32), 0.8);
    expect(isFewClusters).toBe(false);
    expect(Math.log(arm!.upper / arm!.oddsRatio)).toBeCloseTo(1.2815515655446004 * arm!.standardError, 9);
    expect(arm!.chance).toBeCloseTo(2 * normalTail(arm!.estimate / arm!.standardError), 12);
    expect([28, 29, 30].map((trees) => logisticRegression(of(trees)).isFewClusters)).toEqual([true, true, false]);
  });

  test('ever so many plants of the same few trees make nobody surer', () => {
    const many = FOUR.map((one) => ({ ...one, successes: one.successes * 1e14, plants: one.plants * 1e14 }));
    // Without the factor for plants, which then is 1.
    expect(logisticRegression(many).terms[1]).toMatchObject({ estimate: expect.closeTo(Math.log(3), 8), standardError: expect.closeTo(ERROR * Math.sqrt(14 / 15), 6) });
  });

  test('a tree alone in its arm is alone in however many rows it is told', () => {
    expect(() => logisticRegression([row([1], 3, 5, 'a'), row([1], 2, 5, 'a'), row([0], 2, 5, 'b'), row([0], 4, 5, 'c')])).toThrow(expect.objectContaining({ code: 'comparison/too-few-clusters', message: expect.stringContaining('alone') }));
  });

  test('nothing at all is too few', () => expect(() => logisticRegression([])).toThrow(expect.objectContaining({ code: 'comparison/too-few-clusters' })));

  test('one term without an end among others that have one is told', () => {
    expect(() => logisticRegression([row([0, 0], 2, 5, 'a'), row([1, 1], 2, 5, 'b'), row([0, 1], 5, 5, 'c')])).toThrow(expect.objectContaining({ code: 'comparison/separated' }));
  });
});

describe('the estimate', () => {
  test('is found where a whole step leads astray: nearly all at one end, nearly half at the other', () => {
    const { terms, iterations } = logisticRegression([row([50], 499_998, 500_000, 'a'), row([50], 499_999, 500_000, 'b'), row([1], 230, 500, 'c'), row([1], 235, 500, 'd')]);
    const slope = (logit(0.999997) - logit(0.465)) / 49;
    expect(terms[1]!.estimate).toBeCloseTo(slope, 8);
    expect(terms[0]!.estimate).toBeCloseTo(logit(0.465) - slope, 8);
    expect(iterations).toBeGreaterThan(1);
    expect(iterations).toBeLessThan(30);
  });

  // Whole steps from the start raise the deviance of each of these, and most of them never come back.
  test.each([
    [[[2, 987_775, 1_000_000], [5, 1, 2], [50, 0, 2]]],
    [[[2, 526, 1000], [5, 8, 10], [1, 2, 1_000_000], [100, 997, 1000]]],
    [[[100, 2, 2], [0, 3, 1_000_000], [10, 96, 1000], [5, 3, 1_000_000]]],
    [[[100, 0, 2], [1, 1, 10], [2, 997, 1000], [10, 1, 10]]],
  ])('is found where whole steps run away: %j', (lots) => {
    // Each lot on two trees, as evenly as it goes.
    const told = lots.flatMap(([x, successes, plants]) => [row([x!], Math.ceil(successes! / 2), Math.ceil(plants! / 2), 'a'), row([x!], Math.floor(successes! / 2), Math.floor(plants! / 2), 'b')]);
    const estimates = logisticRegression(told).terms.map(({ estimate }) => estimate);
    for (const term of [0, 1]) {
      const gap = told.reduce((sum, { terms, successes, plants }) => sum + [1, ...terms][term]! * (successes - plants * shareAt(logOdds(terms, estimates))), 0);
      expect(gap).toBeCloseTo(0, 4);
    }
  });

  test('leaves as many rooted as were seen, term by term', () => {
    const rows = fc.array(fc.record({ x: fc.integer({ min: -3, max: 9 }), y: fc.integer({ min: 0, max: 2 }), successes: fc.integer({ min: 1, max: 400 }), more: fc.integer({ min: 1, max: 400 }), cluster: fc.constantFrom('a', 'b', 'c', 'd', 'e', 'f') }), { minLength: 8, maxLength: 14 });
    fc.assert(fc.property(rows, (lots) => {
      const told = lots.map(({ x, y, successes, more, cluster }) => row([x, y], successes, successes + more, cluster));
      let found;
      try {
        found = logisticRegression(told);
      } catch {
        return;
      }
      const estimates = found.terms.map(({ estimate }) => estimate);
      [0, 1, 2].forEach((term) => {
        const gap = told.reduce((sum, { terms, successes, plants }) => sum + [1, ...terms][term]! * (successes - plants * shareAt(logOdds(terms, estimates))), 0);
        expect(gap).toBeCloseTo(0, 5);
      });
    }), { numRuns: 60 });
  });
});

test('shares and their logarithms keep their digits at both ends', () => {
  expect([shareAt(0), shareAt(Math.log(3)), shareAt(-800), shareAt(800)]).toEqual([0.5, expect.closeTo(0.75, 15), 0, 1]);
  expect(shareAt(-100) / Math.exp(-100)).toBeCloseTo(1, 14);
  expect([logShareAt(-800), logShareAt(0)]).toEqual([-800, -Math.LN2]);
  expect(logShareAt(40) / -Math.exp(-40)).toBeCloseTo(1, 14);
  expect(logShareAt(800)).toBeCloseTo(0, 300);
});

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { studentTTail } from '../distribution/student-t-tail.ts';
import { studentTQuantile } from '../survival/student-t-quantile.ts';
import { logisticRegression, type LogisticRow } from './logistic-regression.ts';

const row = (terms: number[], successes: number, plants: number, cluster: string): LogisticRow => ({ terms, successes, plants, cluster });

describe('logistic regression', () => {
  // Hoblyn TN, Palmer RC (1934) in Bartlett MS (1935): plum root cuttings alive of 240; from memory. Terms: long, at once, both.
  // Nobody printed their trays: they are shared out among two here, which moves the clustered errors and nothing else.
  const PLUMS = ([[[1, 1, 1], 156], [[1, 0, 0], 84], [[0, 1, 0], 107], [[0, 0, 0], 31]] as const).flatMap(([terms, alive], at) => {
    const inOne = Math.floor(alive / 2) + 4;
    return [row([...terms], inOne, 120, `${at} one`), row([...terms], alive - inOne, 120, `${at} other`)];
  });

  test('plum root cuttings with an interaction: a full model gives each cell’s own odds, worked by hand', () => {
    const { terms } = logisticRegression(PLUMS);
    const odds = (alive: number) => alive / (240 - alive);
    expect(terms[0]!.estimate).toBeCloseTo(Math.log(odds(31)), 9);
    expect(terms[1]!.estimate).toBeCloseTo(Math.log(odds(84) / odds(31)), 9);
    expect(terms[2]!.estimate).toBeCloseTo(Math.log(odds(107) / odds(31)), 9);
    expect(terms[3]!.estimate).toBeCloseTo(Math.log((odds(156) * odds(31)) / (odds(84) * odds(107))), 9);
    expect(terms[1]!.plainError).toBeCloseTo(Math.sqrt(1 / 84 + 1 / 156 + 1 / 31 + 1 / 209), 9);
  });

  test('plum root cuttings: length and time act by themselves, and their interaction is small (Bartlett 1935 found chi-square 2.27 for it; from memory)', () => {
    const full = logisticRegression(PLUMS);
    const additive = logisticRegression(PLUMS.map(({ terms, ...rest }) => ({ ...rest, terms: terms.slice(0, 2) })));
    expect(Math.abs(additive.deviance - full.deviance - 2.27)).toBeLessThan(0.05);
  });

  const lots = fc.array(fc.record({ x: fc.constantFrom(0, 1), successes: fc.integer({ min: 1, max: 9 }), more: fc.integer({ min: 1, max: 9 }), cluster: fc.constantFrom('a', 'b', 'c', 'd', 'e') }), { minLength: 6, maxLength: 20 });
  test('splitting a row within its cluster changes nothing; another name of the clusters neither', () => {
    fc.assert(fc.property(lots, (lots) => {
      const rows = lots.map(({ x, successes, more, cluster }) => row([x], successes, successes + more, cluster));
      let plain;
      try {
        plain = logisticRegression(rows);
      } catch {
        return;
      }
      const split = rows.flatMap(({ terms, successes, plants, cluster }) => [row([...terms], 1, 1, `${cluster}!`), ...(plants > 1 ? [row([...terms], successes - 1, plants - 1, `${cluster}!`)] : [])]);
      const again = logisticRegression(split);
      again.terms.forEach(({ estimate, standardError }, at) => {
        expect(estimate).toBeCloseTo(plain.terms[at]!.estimate, 7);
        expect(standardError).toBeCloseTo(plain.terms[at]!.standardError, 6);
      });
    }), { numRuns: 60 });
  });

  test('clusters of two opposite trees widen the error, worked by hand', () => {
    // No terms: the share is 1/2, the score of each tree is +-4, the information 20 x 1/4.
    const { terms, isFewClusters } = logisticRegression([row([], 9, 10, 'a'), row([], 1, 10, 'b')]);
    expect(terms[0]!.plainError).toBeCloseTo(Math.sqrt(1 / 5), 9);
    expect(terms[0]!.standardError).toBeCloseTo(Math.sqrt((2 * (32 / 25) * 19) / 19), 9);
    expect(isFewClusters).toBe(true);
  });

  test('one in a thousand million against a thousand: rare is not separated', () => {
    const { terms } = logisticRegression([row([0], 1, 1e9, 'a'), row([0], 3, 1e9, 'b'), row([1], 900, 1e9, 'c'), row([1], 1100, 1e9, 'd')]);
    expect(terms[0]!.estimate).toBeCloseTo(Math.log(2 / (1e9 - 2)), 9);
    expect(terms[1]!.estimate).toBeCloseTo(Math.log((1000 / (1e9 - 1000)) * ((1e9 - 2) / 2)), 9);
    expect(terms[0]!.plainError).toBeCloseTo(Math.sqrt(1 / 4), 6);
  });

  test.each([
    ['some group wholly did it', [row([1], 5, 5, 'a'), row([0], 2, 5, 'b')], 'comparison/separated'],
    ['two terms are one', [row([1, 1], 3, 5, 'a'), row([0, 0], 2, 5, 'b')], 'comparison/not-told-apart'],
    ['a group of one tree alone', [row([1], 3, 5, 'a'), row([0], 2, 5, 'b'), row([0], 4, 5, 'c')], 'comparison/too-few-clusters'],
    ['trees all alike', ['a', 'b', 'c'].flatMap((tree) => [row([1], 3, 5, tree), row([0], 2, 5, tree)]), 'comparison/too-few-clusters'],
    ['one tree', [row([1], 3, 5, 'a'), row([0], 2, 5, 'a')], 'comparison/too-few-clusters'],
    ['more than there are', [row([1], 6, 5, 'a')], 'survival/not-a-count'],
    ['a term left out of a row', [row([1], 3, 5, 'a'), row([], 2, 5, 'b')], 'numbers/not-a-size'],
    ['a term that is no number', [row([1], 3, 5, 'a'), row([Number.NaN], 2, 5, 'b')], 'numbers/not-a-size'],
  ])('%s is refused', (_, rows, code) => expect(() => logisticRegression(rows)).toThrow(expect.objectContaining({ code })));
});

test('Student’s tail leads back to the quantile', () => {
  for (const freedom of [1, 2, 7, 40]) expect(studentTTail(studentTQuantile(0.975, freedom), freedom)).toBeCloseTo(0.025, 12);
  expect(studentTTail(-1, 1)).toBeCloseTo(0.75, 12);
});

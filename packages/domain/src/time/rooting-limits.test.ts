import { describe, expect, test } from 'vitest';
import type { CuttingEnd } from './cutting-history.ts';
import { rootingCurve } from './rooting-curve.ts';
import type { CuttingsOf } from './rooting-shares.ts';

const of = (unit: string, end: CuttingEnd, unrootedAt: number, by: number, plants: number): CuttingsOf =>
  ({ unit, end, from: 0, unrootedAt, aliveAt: end === 'rooted' || end === 'lost' ? unrootedAt : by, by, plants });
const limits = (share: number, halfWidth: number) => [1, -1].map((side) => 1 / (1 + Math.exp((side * halfWidth) / (share * (1 - share)) - Math.log(share / (1 - share)))));
const Z = 1.959963984540054;

describe('limits of cuttings that fare each by itself', () => {
  test('worked by hand: four of ten by week 10, seven by week 20, as a binomial share', () => {
    const { steps } = rootingCurve([of('A', 'rooted', 0, 70, 4), of('A', 'rooted', 70, 140, 3), of('A', 'waiting', 140, 140, 3)]);
    expect(steps.map(({ lower, upper }) => [lower, upper])).toEqual([[4, 1], [7, 1]].map(([n]) => limits(n! / 10, Z * Math.sqrt(((n! / 10) * (1 - n! / 10)) / 10)).map((limit) => expect.closeTo(limit, 4))));
  });

  test('limits at another confidence', () => {
    const [step] = rootingCurve([of('A', 'rooted', 0, 70, 4), of('A', 'waiting', 70, 70, 6)], 0.8).steps;
    expect([step!.lower, step!.upper]).toEqual(limits(0.4, 1.2815515655446004 * Math.sqrt(0.24 / 10)).map((limit) => expect.closeTo(limit, 4)));
  });

  // Shares of those that root: 0.45 by week 10, 0.55 by week 20, all by week 30, n of them. On the log odds 0.45 is 0.2007 below a half, and its
  // limits are z / sqrt(0.2475 n) apart from it: up to 385 they reach a half, beyond they don't; and 0.55 alike from above. Those lost tell nothing of that.
  test.each([[380, 0, 30], [400, 10, 20]])('half of %d that root by week 15, give or take: weeks %d to %d', (n, lower, upper) => {
    const rows = [of('A', 'rooted', 0, 70, 0.45 * n), of('A', 'rooted', 70, 140, 0.1 * n), of('A', 'rooted', 140, 210, 0.45 * n), of('A', 'lost', 140, 210, 200)];
    expect(rootingCurve(rows).halfOfRooting).toEqual({ week: expect.closeTo(15, 2), lower, upper });
  });

  test('half of all has no upper end where the lower limit never reaches it', () => {
    const { halfOfAll } = rootingCurve([of('A', 'rooted', 0, 70, 6), of('A', 'waiting', 70, 70, 4)]);
    expect(halfOfAll).toEqual({ week: expect.closeTo(10 * (5 / 6), 4), lower: 0 });
    expect(rootingCurve([of('A', 'rooted', 0, 70, 4), of('A', 'waiting', 70, 70, 6)])).not.toHaveProperty('halfOfAll');
  });

  test('nothing rooted, or all, is told without limits', () => {
    const [none, all] = [rootingCurve([of('A', 'lost', 0, 70, 1), of('A', 'waiting', 70, 70, 9)]), rootingCurve([of('A', 'rooted', 35, 70, 9)])];
    expect(none.steps).toEqual([{ since: 10, week: 10, rooted: 0, lost: expect.closeTo(0.1, 5) }]);
    expect(all.steps).toEqual([{ since: 5, week: 10, rooted: 1, lost: 0 }]);
    expect(all).toMatchObject({ halfOfAll: { week: 7.5, lower: 5, upper: 10 }, halfOfRooting: { week: 7.5, lower: 5, upper: 10 }, neither: 0, isConverged: true });
    expect(rootingCurve([])).toEqual({ method: 'intervals', isConverged: true, limitsBy: 'cuttings', steps: [], neither: 1 });
  });
});

describe('limits by trees', () => {
  // Of ten cuttings each so many root by week 10, so many more by week 20: 25 and 36 of 50.
  const trees = [[8, 1], [7, 1], [2, 4], [5, 2], [3, 3]] as const;
  const rows = trees.flatMap(([early, late], at) => [of(`T${at}`, 'rooted', 0, 70, early), of(`T${at}`, 'rooted', 70, 140, late), of(`T${at}`, 'waiting', 140, 140, 10 - early - late)]);
  const width = (whole: number, without: readonly number[]) => 2.7764451052 * Math.sqrt(0.8 * without.reduce((sum, share) => sum + (share - whole) ** 2, 0));

  test('worked by hand: each tree left out once, week by week', () => {
    const { steps } = rootingCurve(rows);
    const wanted = [limits(25 / 50, width(25 / 50, [17, 18, 23, 20, 22].map((n) => n / 40))), limits(36 / 50, width(36 / 50, [27, 28, 30, 29, 30].map((n) => n / 40)))];
    expect(steps.map(({ lower, upper }) => [lower, upper])).toEqual(wanted.map((pair) => pair.map((limit) => expect.closeTo(limit, 4))));
  });

  test('of those that root, 25 of 36 by week 10: whether it is more than half the trees can’t tell', () => {
    // Lower limit of 25/36: log odds 0.82, less 1.36.
    expect(limits(25 / 36, width(25 / 36, [17 / 27, 18 / 28, 23 / 30, 20 / 29, 22 / 30]))[0]).toBeLessThan(0.5);
    expect(rootingCurve(rows).halfOfRooting).toEqual({ week: expect.closeTo(10 * (18 / 25), 4), lower: 0, upper: 20 });
  });

  test('trees that are all alike leave nothing to doubt: the limits of the time are those of the looks', () => {
    const same = trees.flatMap((_, at) => [of(`T${at}`, 'rooted', 0, 70, 6), of(`T${at}`, 'rooted', 70, 140, 4)]);
    for (const step of rootingCurve(same).steps) expect(Object.keys(step)).toEqual(['week', 'since', 'rooted', 'lost']);
    expect(rootingCurve(same)).toMatchObject({ limitsBy: 'donors', halfOfAll: { lower: 0, upper: 10 }, halfOfRooting: { lower: 0, upper: 10 } });
  });

  test('beyond twenty trees the parts go by name, so the order of rows means nothing', () => {
    const many = Array.from({ length: 27 }, (_, at) => [of(`T${at}`, 'rooted', 0, 70, 1 + (at % 7)), of(`T${at}`, 'waiting', 70, 70, 8 - (at % 7))]).flat();
    const [one, other] = [rootingCurve(many), rootingCurve([...many.slice(9), ...many.slice(0, 9)])];
    expect(one.steps[0]!.lower).toBeCloseTo(other.steps[0]!.lower!, 12);
  });
});

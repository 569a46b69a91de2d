import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { CuttingEnd } from './cutting-history.ts';
import { logRank } from './log-rank.ts';
import { rootingCurve } from './rooting-curve.ts';
import { type CuttingsOf, rootingTimes, watchedByWeek } from './rooting-shares.ts';
import { turnbull } from './turnbull.ts';
import { twoEnds, type TwoEnded } from './two-ends.ts';

const rooted = (after: number, by: number, plants: number): TwoEnded => ({ end: 'first', after, by, plants });
const lost = (after: number, by: number, plants: number): TwoEnded => ({ end: 'second', after, by, plants });
const waiting = (after: number, notSecondAt: number, plants: number): TwoEnded => ({ after, notSecondAt, plants });

describe('two ends between looks', () => {
  test('worked by hand: those nobody looked at for roots are shared out as the others fared, and are not lost', () => {
    // p rooted, q neither, d lost: p^4 d^2 q^4 (p + q)^10 is largest at d = 2/20, p = q = 9/20.
    const told = twoEnds([rooted(0, 10, 4), lost(0, 5, 2), waiting(10, 10, 4), waiting(0, 10, 10)]);
    expect(told.first).toEqual([{ after: 0, by: 10, share: expect.closeTo(9 / 20, 5) }]);
    expect(told.second).toEqual([{ after: 0, by: 5, share: expect.closeTo(1 / 10, 5) }]);
    expect(told).toMatchObject({ neither: expect.closeTo(9 / 20, 5), isConverged: true });
  });

  test('without losses it is Turnbull’s estimate', () => {
    const seen = fc.array(fc.record({ after: fc.nat(8), wide: fc.integer({ min: 1, max: 5 }), plants: fc.integer({ min: 1, max: 9 }) }), { minLength: 1, maxLength: 8 });
    fc.assert(fc.property(seen, (rows) => {
      const ours = twoEnds(rows.map(({ after, wide, plants }) => rooted(after, after + wide, plants)), 20_000);
      const theirs = turnbull(rows.map(({ after, wide, plants }) => ({ after, by: after + wide, plants })));
      for (const { by, share } of theirs.regions) expect(ours.first.find((region) => region.by === by)?.share ?? 0).toBeCloseTo(share, 2);
    }), { numRuns: 50 });
  });

  test('shares add up to all there is', () => {
    const row = fc.record({ kind: fc.constantFrom('rooted', 'lost', 'waiting'), after: fc.nat(20), more: fc.integer({ min: 1, max: 10 }), plants: fc.integer({ min: 1, max: 50 }) });
    fc.assert(fc.property(fc.array(row, { minLength: 1, maxLength: 12 }), (rows) => {
      const { first, second, neither } = twoEnds(rows.map(({ kind, after, more, plants }) => (kind === 'waiting' ? waiting(after, after + more, plants) : kind === 'lost' ? lost(after, after + more, plants) : rooted(after, after + more, plants))));
      expect([...first, ...second].reduce((sum, { share }) => sum + share, neither)).toBeCloseTo(1, 6);
    }));
  });

  test.each([[[]], [[rooted(5, 5, 1)]], [[waiting(5, 4, 1)]], [[lost(0, 5, 0)]]])('%j is refused', (seen) => expect(() => twoEnds(seen)).toThrow());
});

const of = (unit: string, end: CuttingEnd, unrootedAt: number, by: number, plants: number, more: Partial<CuttingsOf> = {}): CuttingsOf =>
  ({ unit, end, from: 0, unrootedAt, aliveAt: end === 'rooted' || end === 'lost' ? unrootedAt : by, by, plants, ...more });

describe('a curve of roots', () => {
  /** Ten cuttings of each of five trees: four rooted in weeks 10 to 20, four in weeks 20 to 30, one lost, one called. */
  const alike = ['A', 'B', 'C', 'D', 'E'].flatMap((tree) => [of(tree, 'rooted', 70, 140, 4), of(tree, 'rooted', 140, 210, 4), of(tree, 'lost', 0, 70, 1), of(tree, 'called', 210, 210, 1)]);

  test('worked by hand: half of those that root have by week 20, half of all by a quarter of the way from 20 to 30', () => {
    const curve = rootingCurve(alike);
    expect(curve).toMatchObject({ method: 'intervals', limitsBy: 'donors', isConverged: true, neither: expect.closeTo(0.1, 6) });
    expect(curve.steps.map(({ since, week, rooted: share, lost: gone }) => [since, week, share, gone])).toEqual([
      [10, 10, 0, expect.closeTo(0.1, 6)], [10, 20, expect.closeTo(0.4, 6), expect.closeTo(0.1, 6)], [20, 30, expect.closeTo(0.8, 6), expect.closeTo(0.1, 6)],
    ]);
    expect(curve.halfOfRooting?.week).toBeCloseTo(20, 4);
    expect(curve.halfOfAll?.week).toBeCloseTo(22.5, 4);
  });

  test('trees that differ make limits wide, and five of them are needed for that', () => {
    const trees = [[8, 2], [7, 3], [2, 8], [5, 5], [3, 7]].flatMap(([root = 0, wait = 0], at) => [of(`T${at}`, 'rooted', 70, 140, root), of(`T${at}`, 'waiting', 140, 140, wait)]);
    const [step] = rootingCurve(trees).steps;
    // Shares without one tree: 17, 18, 23, 20, 22 of 40. Jackknife variance 4/5 x the squares of their distance from 1/2.
    const squares = [17, 18, 23, 20, 22].reduce((sum, n) => sum + (n / 40 - 0.5) ** 2, 0);
    const width = (2.7764451052 * Math.sqrt(0.8 * squares)) / 0.25;
    expect(step).toMatchObject({ rooted: expect.closeTo(0.5, 6), lower: expect.closeTo(1 / (1 + Math.exp(width)), 5), upper: expect.closeTo(1 / (1 + Math.exp(-width)), 5) });
    const few = rootingCurve(trees.filter(({ unit }) => unit < 'T4'));
    expect(few.limitsBy).toBe('cuttings');
    expect(few.steps[0]!.upper! - few.steps[0]!.lower!).toBeLessThan(step!.upper! - step!.lower!);
  });

  test('plants that came late count from then on, on the days they were seen', () => {
    // Ten from the start, of which five root by week 10; ten more come in week 15; of the fifteen then waiting ten root by week 20.
    const rows = [of('A', 'rooted', 0, 70, 5), of('A', 'rooted', 70, 140, 2), of('A', 'waiting', 140, 140, 3), of('B', 'rooted', 105, 140, 8, { from: 105 }), of('B', 'waiting', 140, 140, 2, { from: 105 })];
    const curve = rootingCurve(rows);
    expect(curve.method).toBe('days-seen');
    expect(curve.steps.map(({ week, rooted: share }) => [week, share])).toEqual([[10, 0.5], [20, expect.closeTo(0.5 + 0.5 * (10 / 15), 12)]]);
    expect([0, 10, 16, 20, 400].map(watchedByWeek(rows))).toEqual([10, 5, 15, 0, 0]);
  });

  test('who is watched in a week is added up for all weeks at once as it is for one', () => {
    const row = fc.record({ from: fc.nat(300), unrootedAt: fc.nat(300), by: fc.nat(300), plants: fc.integer({ min: 1, max: 50 }) });
    fc.assert(fc.property(fc.array(row, { maxLength: 12 }), fc.nat(60), (rows, week) => {
      const one = rows.filter(({ from, by }) => Math.floor(from / 7) <= week && Math.ceil(by / 7) > week).reduce((sum, { plants }) => sum + plants, 0);
      expect(watchedByWeek(rows.map((told) => ({ ...told, aliveAt: told.unrootedAt, end: 'waiting' })))(week)).toBe(one);
    }));
  });

  test('few that came late, up to one in twenty, are left out, so that the looks between the others count', () => {
    const late = (plants: number) => rootingCurve([...alike, of('F', 'lost', 105, 140, plants, { from: 105 })]);
    expect(late(2)).toEqual(rootingCurve(alike));
    expect(late(3).method).toBe('days-seen');
  });

  test('what nobody has seen since it came says nothing, makes no tree, and is not late', () => {
    const four = alike.filter(({ unit }) => unit < 'E');
    expect(rootingCurve([...four, of('E', 'waiting', 0, 0, 400)])).toEqual(rootingCurve(four));
    expect(rootingCurve(four).limitsBy).toBe('cuttings');
    expect(rootingCurve([...alike, of('F', 'waiting', 105, 105, 400, { from: 105 })])).toEqual(rootingCurve(alike));
    // Within the first week something is told: they were there until the next.
    expect(watchedByWeek([of('A', 'lost', 0, 3, 2)])(0)).toBe(2);
  });

  test('nothing seen yet, nothing rooted yet', () => {
    expect(rootingCurve([of('A', 'waiting', 0, 0, 10)])).toMatchObject({ steps: [], neither: 1 });
    expect(rootingCurve([of('A', 'waiting', 70, 70, 9)])).toMatchObject({ steps: [] });
    expect(rootingCurve([of('A', 'lost', 0, 70, 1), of('A', 'waiting', 70, 70, 9)])).not.toHaveProperty('halfOfRooting');
  });

  test('shares never fall, and limits hold them', () => {
    const row = fc.record({ unit: fc.constantFrom('A', 'B', 'C', 'D', 'E', 'F', 'G'), end: fc.constantFrom<CuttingEnd>('rooted', 'lost', 'called', 'waiting'), at: fc.nat(200), more: fc.integer({ min: 1, max: 90 }), plants: fc.integer({ min: 1, max: 20 }), from: fc.constantFrom(0, 0, 0, 0, 30) });
    fc.assert(fc.property(fc.array(row, { minLength: 1, maxLength: 15 }), (rows) => {
      const { steps } = rootingCurve(rows.map(({ unit, end, at, more, plants, from }) => of(unit, end, from + at, from + at + more, plants, { from })));
      steps.forEach(({ rooted: share, lost: gone, lower = 0, upper = 1 }, at) => {
        expect(share + gone).toBeLessThanOrEqual(1 + 1e-6);
        expect(share).toBeGreaterThanOrEqual((steps[at - 1]?.rooted ?? 0) - 1e-9);
        expect(lower <= share + 1e-9 && share <= upper + 1e-9).toBe(true);
      });
    }), { numRuns: 60 });
  });

  test('times until roots were seen go to the log-rank test: trees that root sooner are found', () => {
    const groups = [rootingTimes([of('A', 'rooted', 0, 70, 9), of('A', 'lost', 0, 140, 1)]), rootingTimes([of('A', 'rooted', 70, 140, 2), of('A', 'waiting', 140, 140, 8)])];
    expect(logRank([groups])).toMatchObject({ freedom: 1, groups: [{ observed: 9 }, { observed: 2 }], chance: expect.closeTo(0, 2) });
  });
});

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Followed } from './followed.ts';
import { kaplanMeier } from './kaplan-meier.ts';
import { logRank } from './log-rank.ts';

const one = (until: number, happened = true, plants = 1): Followed => ({ until, happened, plants });
// Freireich EJ et al. (1963) Blood 21:699-716: weeks of remission, as printed in many textbooks; from memory. A plus is still in remission.
const TREATED = [...[6, 6, 6, 7, 10, 13, 16, 22, 23].map((week) => one(week)), ...[6, 9, 10, 11, 17, 19, 20, 25, 32, 32, 34, 35].map((week) => one(week, false))];
const PLACEBO = [1, 1, 2, 2, 3, 4, 4, 5, 5, 8, 8, 8, 8, 11, 11, 12, 12, 15, 17, 22, 23].map((week) => one(week));

describe('Kaplan-Meier', () => {
  test('remission times of Freireich et al. 1963, with Greenwood’s errors as printed', () => {
    const { steps, median } = kaplanMeier(TREATED, 'plain');
    const printed = [[6, 21, 0.857, 0.0764], [7, 17, 0.807, 0.0869], [10, 15, 0.753, 0.0963], [13, 12, 0.69, 0.1068], [16, 11, 0.627, 0.1141], [22, 7, 0.538, 0.1282], [23, 6, 0.448, 0.1346]] as const;
    for (const [time, atRisk, surviving, error] of printed) {
      const step = steps.find((one) => one.time === time)!;
      expect(step.atRisk).toBe(atRisk);
      expect(Math.abs(step.surviving - surviving)).toBeLessThanOrEqual(0.0005);
      expect(Math.abs(step.standardError - error)).toBeLessThanOrEqual(0.00005);
    }
    expect(median).toBe(23);
    expect(kaplanMeier(PLACEBO).median).toBe(8);
  });

  test('limits as R’s survival package prints them for that group at week 6; from memory', () => {
    const at6 = (by: 'plain' | 'log' | 'log-log') => kaplanMeier(TREATED, by).steps[0]!;
    expect([at6('log').lower, at6('log').upper]).toEqual([expect.closeTo(0.72, 2), 1]);
    expect([at6('log-log').lower, at6('log-log').upper]).toEqual([expect.closeTo(0.620, 3), expect.closeTo(0.952, 3)]);
    expect([at6('plain').lower, at6('plain').upper]).toEqual([expect.closeTo(0.707, 3), 1]);
  });

  test('worked by hand: of three one goes at 1, one is last seen at 2, one goes at 3', () => {
    const { steps, median } = kaplanMeier([one(1), one(2, false), one(3)]);
    expect(steps.map(({ surviving }) => surviving)).toEqual([expect.closeTo(2 / 3, 12), expect.closeTo(2 / 3, 12), 0]);
    expect(steps[0]!.standardError).toBeCloseTo(Math.sqrt(2 / 27), 12);
    expect(steps[2]!.lower).toBeUndefined();
    expect(median).toBe(3);
  });

  test('the median with its limits: first times at which curve and limits are at a half or below', () => {
    const of = (...times: number[]) => kaplanMeier(times.map((time) => one(time)), 'plain', 0.5);
    // At just a half: half-way to the next step. The limits at 50 % are S (1 -+ 0.6745 sqrt(V)): 1/2 -+ 0.1686 at 2, 1/4 -+ 0.146 at 3, 3/4 -+ 0.146 at 1.
    expect(of(1, 2, 3, 4)).toMatchObject({ median: 2.5, medianLower: 2, medianUpper: 3 });
    // Of three, the upper limit at 2 is 1/3 (1 + 0.6745 sqrt(2/3)), above a half, and then nobody is left to say.
    expect(of(1, 2, 3)).toMatchObject({ median: 2, medianLower: 1 });
    expect(of(1, 2, 3)).not.toHaveProperty('medianUpper');
    expect(kaplanMeier([one(1), one(2, false), one(2, false)])).not.toHaveProperty('median');
  });

  test('shares of plants leave no dust, and the last tenth of a plant is seen to go', () => {
    const { steps } = kaplanMeier([one(1, true, 0.1), one(2, true, 0.2), one(3, true, 0.3)]);
    expect(steps.map(({ atRisk, surviving }) => [atRisk.toFixed(12), surviving.toFixed(12)])).toEqual([['0.600000000000', '0.833333333333'], ['0.500000000000', '0.500000000000'], ['0.300000000000', '0.000000000000']]);
    expect(steps[2]).toMatchObject({ surviving: 0, standardError: 0 });
  });

  test('when all early ones have gone, nobody is left, whatever dust the sum of those who came just then leaves', () => {
    // 0.1 + 0.2 + 0.3 is not 0.3 + 0.2 + 0.1 to a computer.
    const late = [[4, 0.1], [3, 0.2], [2, 0.3]].map(([until, plants]) => ({ from: 1, until: until!, plants: plants!, happened: false }));
    const [first] = kaplanMeier([one(1, true, 0.5), ...late.reverse()]).steps;
    expect(first).toEqual({ time: 1, atRisk: expect.closeTo(0.5, 12), events: 0.5, censored: 0, surviving: 0, standardError: 0 });
  });

  test('counts in another unit give the same curve, down to millionths of a plant', () => {
    for (const unit of [1e-6, 1, 1e6]) {
      const { steps } = kaplanMeier([one(1, true, 0.999 * unit), one(2, true, 0.001 * unit)]);
      expect(steps.map(({ surviving }) => surviving)).toEqual([expect.closeTo(0.001, 12), 0]);
    }
  });

  test('before anything happened the limits are the curve; a confidence of 80 % is narrower than one of 95 %', () => {
    expect(kaplanMeier([one(1, false), one(2)]).steps[0]).toMatchObject({ surviving: 1, lower: 1, upper: 1, censored: 1, events: 0 });
    const [narrow, wide] = [0.8, 0.95].map((confidence) => kaplanMeier(TREATED, 'log', confidence).steps[3]!);
    expect(narrow!.lower!).toBeGreaterThan(wide!.lower!);
    // 15 of 21 weeks: log limits are S exp(-+ z se / S).
    expect(narrow!.lower!).toBeCloseTo(narrow!.surviving * Math.exp((-1.2815515655446004 * narrow!.standardError) / narrow!.surviving), 10);
  });

  test('who comes late counts from then on', () => {
    const { steps } = kaplanMeier([one(1), one(4), { from: 2, until: 3, plants: 2, happened: true }]);
    expect(steps.map(({ atRisk, surviving }) => [atRisk, surviving])).toEqual([[2, 1 / 2], [3, expect.closeTo(1 / 6, 12)], [1, 0]]);
  });

  const lots = fc.array(fc.record({ until: fc.integer({ min: 1, max: 40 }), plants: fc.integer({ min: 1, max: 9 }), happened: fc.boolean() }), { minLength: 1, maxLength: 30 });
  test('weights are copies, order means nothing, time is only a scale, and the curve never rises', () => {
    fc.assert(fc.property(lots, (followed) => {
      const curve = kaplanMeier(followed).steps;
      const copies = followed.flatMap(({ plants, ...rest }) => Array.from({ length: plants }, () => ({ ...rest, plants: 1 })));
      const close = (a: readonly { surviving: number; standardError: number }[]) => a.map(({ surviving, standardError }) => [surviving.toFixed(10), standardError.toFixed(10)]);
      expect(close(kaplanMeier(copies.reverse()).steps)).toEqual(close(curve));
      expect(close(kaplanMeier(followed.map((lot) => ({ ...lot, until: lot.until * 7 }))).steps)).toEqual(close(curve));
      curve.forEach(({ surviving, lower = surviving, upper = surviving }, at) => {
        expect(surviving).toBeLessThanOrEqual(curve[at - 1]?.surviving ?? 1);
        expect(lower).toBeLessThanOrEqual(surviving + 1e-12);
        expect(upper).toBeGreaterThanOrEqual(surviving - 1e-12);
      });
    }));
  });

  test('from a thousand-millionth of a plant to a million thousand million, and none beyond', () => {
    for (const plants of [1e-9, 1e15]) expect(kaplanMeier([one(3, true, plants)]).steps[0]).toMatchObject({ events: plants, atRisk: plants });
    for (const plants of [0.9e-9, 1.1e15, Number.POSITIVE_INFINITY, Number.NaN, -1]) expect(() => kaplanMeier([one(3, true, plants)])).toThrow(expect.objectContaining({ code: 'survival/not-a-count' }));
  });

  test.each([[{ from: -1 }], [{ until: Number.POSITIVE_INFINITY }], [{ from: Number.NaN }], [{ from: 3 }], [{ from: 4 }]])('followed from 0 until a later day: not %j', (span) => {
    expect(() => kaplanMeier([one(3), { ...one(3), ...span }])).toThrow(expect.objectContaining({ code: 'survival/not-a-time' }));
  });

  test.each([[[]], [[one(0)]], [[one(Number.NaN)]], [[one(3, true, 0)]], [[{ from: 3, until: 3, plants: 1, happened: true }]]])('no answer is a refusal', (followed) => {
    expect(() => kaplanMeier(followed)).toThrow(expect.objectContaining({ code: expect.stringMatching(/^survival\//) }));
  });
});

describe('log-rank', () => {
  // Textbooks print 16.79 for Freireich's two groups (e.g. Kleinbaum & Klein); from memory. Observed 9 and 21, expected 19.25 and 10.75.
  test('Freireich et al. 1963', () => {
    const { chiSquare, freedom, groups, chance } = logRank([[TREATED, PLACEBO]]);
    expect(Math.abs(chiSquare - 16.79)).toBeLessThanOrEqual(0.005);
    expect(freedom).toBe(1);
    expect(groups.map(({ observed }) => observed)).toEqual([9, 21]);
    expect(groups.map(({ expected }) => expected)).toEqual([expect.closeTo(19.25, 2), expect.closeTo(10.75, 2)]);
    expect(chance).toBeCloseTo(4.17e-5, 6);
  });

  test('worked by hand: three groups at one moment are a test of three shares', () => {
    // 3, 1 and 0 of 4 go at once: expected 4/3 each, variance 4 x 8 / 11 x (1/3) (delta - 1/3); by hand 11 / (4 x 8) x 3 x sum of squares 42/9.
    const { chiSquare, freedom, groups } = logRank([[3, 1, 0].map((n) => [...(n > 0 ? [one(1, true, n)] : []), one(1, false, 4 - n)])]);
    expect(freedom).toBe(2);
    expect(chiSquare).toBeCloseTo((11 / 32) * 3 * (42 / 9), 10);
    groups.forEach(({ expected }) => expect(expected).toBeCloseTo(4 / 3, 12));
  });

  test('who comes late was not there before', () => {
    // At 1 only the first two are there; at 3 one of them and two who came at 2.
    const { groups } = logRank([[[one(1), one(4, false)], [{ from: 2, until: 3, plants: 1, happened: true }, { from: 2, until: 5, plants: 1, happened: false }]]]);
    expect(groups).toEqual([{ observed: 1, expected: expect.closeTo(1 + 1 / 3, 12) }, { observed: 1, expected: expect.closeTo(2 / 3, 12) }]);
  });

  test('worked by hand: one each, one after the other', () => {
    // At 1 both are at risk: expected 1/2, variance 1/4; at 2 one is alone.
    const { chiSquare, groups } = logRank([[[one(1)], [one(2)]]]);
    expect(chiSquare).toBeCloseTo(1, 12);
    expect(groups).toEqual([{ observed: 1, expected: 0.5 }, { observed: 1, expected: 1.5 }]);
  });

  const lots = fc.array(fc.record({ until: fc.integer({ min: 1, max: 20 }), plants: fc.integer({ min: 1, max: 5 }), happened: fc.boolean() }), { minLength: 2, maxLength: 12 });
  test('the order of groups, an empty group and an empty stratum change nothing; two equal strata tell twice as much', () => {
    fc.assert(fc.property(lots, lots, (a, b) => {
      let plain;
      try {
        plain = logRank([[a, b]]);
      } catch {
        return;
      }
      expect(logRank([[b, a]]).chiSquare).toBeCloseTo(plain.chiSquare, 8);
      expect(logRank([[a, b, []]]).chiSquare).toBeCloseTo(plain.chiSquare, 8);
      expect(logRank([[a, b], [[], []]]).chiSquare).toBeCloseTo(plain.chiSquare, 8);
      expect(logRank([[a, b], [a, b]]).chiSquare).toBeCloseTo(2 * plain.chiSquare, 6);
    }));
  });

  test('groups that were never there together say nothing of each other', () => {
    const late = (until: number) => ({ from: 10, until, plants: 1, happened: true });
    // The first two are gone before the other two come.
    expect(() => logRank([[[one(1)], [one(2)], [late(11)], [late(12)]]])).toThrow(expect.objectContaining({ code: 'survival/too-few-groups' }));
  });

  test.each([[[]], [[[[one(1)]]]], [[[[one(1, false)], [one(2, false)]]]]])('nothing to compare is refused', (strata) => {
    expect(() => logRank(strata)).toThrow(expect.objectContaining({ code: 'survival/too-few-groups' }));
  });
});

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  chao1, donorRatioInterval, donorsPlanted, evenCounts, fisherExact, forecast, kaplanMeier, logisticRegression, logRank, mantelHaenszel, newcombeDifference, overdispersion,
  stateOccupancy, statusNumber, turnbull, wilsonInterval, type Between, type Followed, type LogisticRow, type StateStay, type TwoByTwo,
} from './index.ts';

// What must not matter, and what must matter just so much, whatever the formula: no printed value is needed to see these broken.
const RUNS = { numRuns: 60 };
const near = (ours: readonly number[], wanted: readonly number[], digits = 1e-8) => {
  expect(ours).toHaveLength(wanted.length);
  ours.forEach((value, at) => expect(Math.abs(value - wanted[at]!), `${value}, not ${wanted[at]}`).toBeLessThanOrEqual(digits * Math.max(1, Math.abs(wanted[at]!))));
};

const lot = fc.record({ until: fc.integer({ min: 1, max: 30 }), plants: fc.integer({ min: 1, max: 9 }), happened: fc.boolean() });
const lots = fc.array(lot, { minLength: 2, maxLength: 20 }).map((all): Followed[] => [{ until: 3, plants: 2, happened: true }, { until: 31, plants: 1, happened: false }, ...all]);
const looks = fc.array(fc.tuple(fc.nat(20), fc.integer({ min: 1, max: 9 }), fc.boolean(), fc.integer({ min: 1, max: 5 })), { minLength: 2, maxLength: 20 })
  .map((all): Between[] => all.map(([after, more, isOpen, plants]) => ({ after, by: isOpen ? Number.POSITIVE_INFINITY : after + more, plants })));
type State = 'cutting' | 'rooted' | 'lost';
const STATES: readonly State[] = ['cutting', 'rooted', 'lost'];
const stays = fc.array(fc.record({ until: fc.integer({ min: 1, max: 20 }), plants: fc.integer({ min: 1, max: 9 }), to: fc.constantFrom('rooted', 'lost', undefined) }), { minLength: 2, maxLength: 20 })
  .map((all): StateStay<State>[] => all.map(({ to, ...rest }) => ({ state: 'cutting', from: 0, ...rest, ...(to ? { to: to as State } : {}) })));
const cell = fc.integer({ min: 1, max: 40 });
const table = fc.tuple(cell, cell, cell, cell).map(([a, b, c, d]): TwoByTwo => ({ first: { yes: a, no: b }, second: { yes: c, no: d } }));
const outcomes = fc.array(fc.tuple(cell, cell).map(([successes, more]) => ({ successes, plants: successes + more })), { minLength: 5, maxLength: 15 })
  .filter((all) => new Set(all.map(({ successes, plants }) => successes / plants)).size > 1);
const rows = fc.array(fc.record({ x: fc.constantFrom(-1, 0, 2), successes: cell, more: cell, cluster: fc.integer({ min: 0, max: 9 }) }), { minLength: 20, maxLength: 40 })
  .map((all): LogisticRow[] => all.map(({ x, successes, more, cluster }, at) => ({ terms: [x], successes, plants: successes + more, cluster: `${at < 10 ? at : cluster}` })));

const curveOf = (followed: readonly Followed[]) => kaplanMeier(followed).steps.filter(({ events }) => events > 0);
const occupancyAt = (all: readonly StateStay<State>[]) => stateOccupancy(all, STATES).flatMap(({ shares, standardErrors }) => [...shares, ...standardErrors]);
const sharesOf = (seen: readonly Between[]) => turnbull(seen).regions.map(({ share }) => share);
const regressionOf = (all: readonly LogisticRow[]) => logisticRegression(all).terms.flatMap(({ estimate, plainError, standardError }) => [estimate, plainError, standardError]);

describe('names and order mean nothing', () => {
  test('to shares by donor trees and their spread', () => {
    fc.assert(fc.property(outcomes, (all) => {
      const turned = all.toReversed();
      near(Object.values(donorRatioInterval(turned)), Object.values(donorRatioInterval(all)));
      near(Object.values(overdispersion(turned)), Object.values(overdispersion(all)));
      near([statusNumber(turned.map(({ plants }) => plants), () => 0.1).status], [statusNumber(all.map(({ plants }) => plants), () => 0.1).status]);
      expect(chao1(turned.map(({ successes }) => successes))).toEqual(chao1(all.map(({ successes }) => successes)));
    }), RUNS);
  });

  test('to tables, rows and states', () => {
    fc.assert(fc.property(table, rows, stays, ({ first, second }, all, ways) => {
      const ends = { first: { yes: first.no, no: first.yes }, second: { yes: second.no, no: second.yes } };
      near([fisherExact(ends).chance, 1 / fisherExact(ends).oddsRatio], [fisherExact({ first, second }).chance, fisherExact({ first, second }).oddsRatio], 1e-7);
      near(regressionOf(all.map((row) => ({ ...row, cluster: `tree ${row.cluster}` })).reverse()), regressionOf(all), 1e-7);
      // Success and failure the other way round: the same with other signs.
      near(regressionOf(all.map((row) => ({ ...row, successes: row.plants - row.successes }))).map(Math.abs), regressionOf(all).map(Math.abs), 1e-7);
      const swapped = stateOccupancy(ways, ['cutting', 'lost', 'rooted']);
      stateOccupancy(ways, STATES).forEach(({ shares }, at) => near([shares[0]!, shares[2]!, shares[1]!], swapped[at]!.shares));
    }), RUNS);
  });
});

describe('twice as much of all', () => {
  test('leaves shares, and makes errors of independent plants smaller by the root of two', () => {
    fc.assert(fc.property(lots, stays, looks, (followed, ways, seen) => {
      const double = <T extends { readonly plants: number }>(all: readonly T[]): T[] => all.map((one) => ({ ...one, plants: 2 * one.plants }));
      near(curveOf(double(followed)).flatMap(({ surviving, standardError }) => [surviving, standardError * Math.SQRT2]), curveOf(followed).flatMap(({ surviving, standardError }) => [surviving, standardError]));
      const [once, twice] = [stateOccupancy(ways, STATES), stateOccupancy(double(ways), STATES)];
      once.forEach(({ shares, standardErrors }, at) => near([...twice[at]!.shares, ...twice[at]!.standardErrors.map((error) => error * Math.SQRT2)], [...shares, ...standardErrors]));
      near(sharesOf(double(seen)), sharesOf(seen), 1e-6);
    }), RUNS);
  });

  test('leaves errors by donor trees, whose number is the same', () => {
    fc.assert(fc.property(outcomes, rows, (all, told) => {
      const double = all.map(({ successes, plants }) => ({ successes: 2 * successes, plants: 2 * plants }));
      const [once, twice] = [donorRatioInterval(all), donorRatioInterval(double)];
      near([twice.standardError, twice.designEffect / 2], [once.standardError, once.designEffect]);
      near([overdispersion(double).factor], [2 * overdispersion(all).factor]);
      const plants = told.reduce((sum, row) => sum + row.plants, 0);
      // But for the small factor that counts plants.
      const factor = Math.sqrt(((2 * plants - 1) / (2 * plants - 2)) / ((plants - 1) / (plants - 2)));
      const [plain, more] = [logisticRegression(told).terms, logisticRegression(told.map((row) => ({ ...row, successes: 2 * row.successes, plants: 2 * row.plants }))).terms];
      plain.forEach((term, at) => near([more[at]!.estimate, more[at]!.plainError * Math.SQRT2, more[at]!.standardError], [term.estimate, term.plainError, term.standardError * factor], 1e-7));
    }), RUNS);
  });

  test('makes limits narrower, and a test of strata twice as sure', () => {
    fc.assert(fc.property(fc.array(table, { minLength: 1, maxLength: 4 }), cell, cell, (strata, successes, more) => {
      const widthOf = ({ lower, upper }: { lower: number; upper: number }) => upper - lower;
      const [some, many] = [{ successes, plants: successes + more }, { successes: 2 * successes, plants: 2 * (successes + more) }];
      expect(widthOf(wilsonInterval(many.successes, many.plants))).toBeLessThan(widthOf(wilsonInterval(some.successes, some.plants)));
      expect(widthOf(newcombeDifference(many, many))).toBeLessThan(widthOf(newcombeDifference(some, some)));
      const [once, twice] = [mantelHaenszel(strata, { isCorrected: false }), mantelHaenszel([...strata, ...strata], { isCorrected: false })];
      near([twice.chiSquare, twice.oddsRatio], [2 * once.chiSquare, once.oddsRatio]);
    }), RUNS);
  });
});

describe('time', () => {
  test('counted from another day moves the curves and nothing else', () => {
    fc.assert(fc.property(lots, stays, looks, fc.integer({ min: 1, max: 400 }), (followed, ways, seen, days) => {
      const later = followed.map((one) => ({ ...one, from: days, until: one.until + days }));
      near(curveOf(later).flatMap(({ time, surviving, standardError }) => [time - days, surviving, standardError]), curveOf(followed).flatMap(({ time, surviving, standardError }) => [time, surviving, standardError]));
      near(occupancyAt(ways.map((stay) => ({ ...stay, from: days, until: stay.until + days }))), occupancyAt(ways));
      near(sharesOf(seen.map((one) => ({ ...one, after: one.after + days, by: one.by + days }))), sharesOf(seen), 1e-6);
    }), RUNS);
  });

  test('is only an order to the log-rank test', () => {
    fc.assert(fc.property(lots, lots, (one, other) => {
      const cubed = (all: readonly Followed[]) => all.map((lot) => ({ ...lot, until: lot.until ** 3 }));
      near([logRank([[cubed(one), cubed(other)]]).chiSquare], [logRank([[one, other]]).chiSquare]);
    }), RUNS);
  });
});

describe('nobody there changes nothing', () => {
  test('whatever is asked', () => {
    fc.assert(fc.property(outcomes, (all) => {
      const more = [...all, { successes: 0, plants: 0 }];
      near(Object.values(donorRatioInterval(more)), Object.values(donorRatioInterval(all)));
      near(Object.values(overdispersion(more)), Object.values(overdispersion(all)));
      const plants = all.map((one) => one.plants);
      near([statusNumber([...plants, 0], () => 0.2).status, chao1([...plants, 0]).atLeast], [statusNumber(plants, () => 0.2).status, chao1(plants).atLeast]);
      const stock = plants.map((n) => ({ lots: [{ plants: n, chance: { mean: 0.3, likeness: 0.1 } }] }));
      near([donorsPlanted([...stock, { lots: [] }, { lots: [{ plants: 0, chance: { mean: 1, likeness: 0 } }] }])], [donorsPlanted(stock)]);
      const named = new Map(plants.map((n, at) => [`CR-${at}`, n]));
      expect([...evenCounts(new Map([...named, ['SG-0', 0]]), 5)].slice(0, -1)).toEqual([...evenCounts(named, 5)]);
      const history = { curve: [{ time: 9, shares: [0.4, 0.6, 0], standardErrors: [0, 0, 0], atRisk: [1, 0, 0] }], likeness: 0.2 };
      const standing = plants.map((n, at) => ({ donorId: `CR-${at % 3}`, plants: n, days: at }));
      expect(forecast([...standing, { donorId: 'SG-0', plants: 0, days: 3 }], history, [4, 40])).toEqual(forecast(standing, history, [4, 40]));
    }), RUNS);
  });
});

test('what happened alike may be told together or apart', () => {
  fc.assert(fc.property(lots, stays, looks, rows, (followed, ways, seen, told) => {
    const apart = <T extends { readonly plants: number }>(all: readonly T[]): T[] => all.flatMap((one) => [{ ...one, plants: one.plants / 2 }, { ...one, plants: one.plants / 2 }]);
    near(curveOf(apart(followed)).map(({ surviving }) => surviving), curveOf(followed).map(({ surviving }) => surviving));
    near(occupancyAt(apart(ways)), occupancyAt(ways));
    near(sharesOf(apart(seen)), sharesOf(seen), 1e-6);
    near(regressionOf(told.flatMap((row) => [{ ...row, successes: 1, plants: 2 }, { ...row, successes: row.successes - 1, plants: row.plants - 2 }].filter(({ successes, plants }) => plants > 0 && successes <= plants && successes >= 0))), regressionOf(told), 1e-6);
  }), RUNS);
});

describe('very many', () => {
  const MANY = 1e9;
  test('a thousand million plants a cell', () => {
    const large: TwoByTwo = { first: { yes: MANY, no: MANY }, second: { yes: MANY - 50_000, no: MANY + 50_000 } };
    const { chance, oddsRatio, lower, upper } = fisherExact(large);
    // As large as that, the test without correction and its limits come to the same: log odds 1e-4, error 1 / sqrt(MANY / 4).
    expect(chance / mantelHaenszel([large], { isCorrected: false }).chance).toBeCloseTo(1, 3);
    expect(Math.log(oddsRatio) * MANY).toBeCloseTo(100_000, 0);
    expect((Math.log(upper) - Math.log(lower)) / (2 * 1.959963984540054 * Math.sqrt(4 / MANY))).toBeCloseTo(1, 4);
    expect(curveOf([{ until: 1, plants: 1, happened: true }, { until: 2, plants: MANY - 1, happened: false }])[0]!.surviving).toBe(1 - 1 / MANY);
    expect(donorRatioInterval([1, 2, 3, 4, 5].map((successes) => ({ successes, plants: MANY }))).rate).toBeCloseTo(3e-9, 20);
  });

  test('ten thousand strata, most with next to nothing to tell', () => {
    const strata = Array.from({ length: 10_000 }, (_, at): TwoByTwo => ({ first: { yes: at % 2, no: (at + 1) % 2 }, second: { yes: at % 3 === 0 ? 1 : 0, no: at % 3 === 0 ? 0 : 1 } }));
    const { chiSquare, oddsRatio, tellingStrata } = mantelHaenszel(strata, { isCorrected: false });
    // Pairs: McNemar's test of the pairs that differ, and their ratio.
    const [won, lost] = [[1, 0], [0, 1]].map(([a, c]) => strata.filter(({ first, second }) => first.yes === a && second.yes === c).length) as [number, number];
    near([chiSquare, oddsRatio, tellingStrata], [(won - lost) ** 2 / (won + lost), won / lost, won + lost]);
    const timed = logRank(strata.map(({ first, second }) => [[{ until: 1, plants: 1, happened: first.yes === 1 }], [{ until: 1, plants: 1, happened: second.yes === 1 }]]));
    near([timed.chiSquare], [chiSquare]);
  });
});

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Occupancy } from '../time/state-occupancy.ts';
import { calibrationOf, forecast } from './forecast.ts';
import { leaveOrCall } from './leave-or-call.ts';
import { moreDonorsOrCuttings } from './more-donors-or-cuttings.ts';
import { fitVaryingChance } from './varying-chance-fit.ts';

const step = (time: number, here: number, gone: number): Occupancy => ({ time, shares: [here, gone, 1 - here - gone], standardErrors: [0, 0, 0], atRisk: [1, 0, 0] });
/** By day 30 four in ten have rooted and one has died; by day 60 seven have rooted and one more has died. */
const CURVE = [step(30, 0.5, 0.4), step(60, 0.2, 0.7)];

describe('a forecast', () => {
  test('worked by hand: fresh plants, and plants that have waited', () => {
    const lot = (days: number) => [{ donorId: 'CR-01', plants: 10, days }];
    expect(forecast(lot(0), { curve: CURVE, likeness: 0 }, [29, 30, 60]).map(({ expected }) => expected)).toEqual([0, expect.closeTo(4, 12), expect.closeTo(7, 12)]);
    // Of the half that is still here on day 30, three in five go on until day 60: 6, give or take 1.2816 x sqrt(10 x 0.6 x 0.4).
    const [waited] = forecast(lot(30), { curve: CURVE, likeness: 0 }, [30]);
    expect(waited).toEqual({ days: 30, expected: expect.closeTo(6, 12), lower: expect.closeTo(6 - 1.2815515655 * Math.sqrt(2.4), 8), upper: expect.closeTo(6 + 1.2815515655 * Math.sqrt(2.4), 8) });
  });

  test('plants of one tree fare together, those of two trees by themselves', () => {
    const range = (donors: readonly string[], likeness: number) => {
      const [ahead] = forecast(donors.map((donorId) => ({ donorId, plants: 50, days: 30 })), { curve: CURVE, likeness }, [30]);
      return ahead === undefined ? Number.NaN : ahead.upper - ahead.lower;
    };
    expect(range(['A', 'A'], 0)).toBeCloseTo(range(['A', 'B'], 0), 9);
    expect(range(['A', 'A'], 0.1)).toBeGreaterThan(range(['A', 'B'], 0.1));
  });

  test('never promises more than there is, nor less for a later day', () => {
    const lots = fc.array(fc.record({ donorId: fc.constantFrom('A', 'B'), plants: fc.nat(40), days: fc.nat(80) }), { maxLength: 6 });
    fc.assert(fc.property(lots, fc.double({ min: 0, max: 0.9, noNaN: true }), (lots, likeness) => {
      const all = lots.reduce((sum, { plants }) => sum + plants, 0);
      const ahead = forecast(lots, { curve: CURVE, likeness }, [0, 20, 40, 400]);
      ahead.forEach(({ expected, lower, upper }, at) => {
        expect(lower).toBeLessThanOrEqual(expected + 1e-9);
        expect(upper).toBeGreaterThanOrEqual(expected - 1e-9);
        expect(upper).toBeLessThanOrEqual(all);
        expect(expected).toBeGreaterThanOrEqual(ahead[at - 1]?.expected ?? 0);
      });
    }));
  });

  test('is held against what came, worked by hand', () => {
    expect(calibrationOf([{ expected: 10, lower: 8, upper: 12, came: 9 }, { expected: 10, lower: 8, upper: 12, came: 3 }])).toEqual({ covered: 0.5, ratio: 0.6, forecasts: 2 });
    expect(calibrationOf([])).toEqual({ covered: 0, forecasts: 0 });
  });
});

describe('leave it or call it', () => {
  test('worked by hand: of twenty green ones on day 30 twelve will root, all within a month', () => {
    expect(leaveOrCall(20, 30, CURVE)).toEqual({ chance: expect.closeTo(0.6, 12), byMonth: [{ month: 1, expected: expect.closeTo(12, 10) }], nothingBefore: 30 });
  });
  test('after the end of the history nothing more is promised, and where none ever rooted there is no first day', () => {
    expect(leaveOrCall(20, 61, CURVE)).toEqual({ chance: 0, byMonth: [], nothingBefore: 30 });
    expect(leaveOrCall(5, 0, [step(90, 0, 0)])).not.toHaveProperty('nothingBefore');
  });
  test('the months add up to the chance', () => {
    fc.assert(fc.property(fc.integer({ min: 1, max: 200 }), fc.nat(70), (green, days) => {
      const { chance, byMonth } = leaveOrCall(green, days, CURVE);
      expect(byMonth.reduce((sum, { expected }) => sum + expected, 0)).toBeCloseTo(green * chance, 9);
    }));
  });
});

describe('a chance drawn towards a prior', () => {
  const PRIOR = { mean: 0.4, likeness: 0.2, plants: 10 };
  const of10 = (...successes: number[]) => successes.map((n) => ({ successes: n, plants: 10 }));

  test('worked by hand: 25 of 50 with a prior of 4 in 10; the trees’ spread of 3.6 is 2.6 more than chance, of 9 that could be', () => {
    expect(fitVaryingChance(of10(8, 8, 2, 2, 5), PRIOR)).toEqual({ mean: 29 / 60, likeness: expect.closeTo(2.6 / 9, 12), donors: 5, ownWeight: 50 / 60 });
  });
  test('is the prior where nothing is known, keeps its likeness below five trees, and never goes below nothing', () => {
    expect(fitVaryingChance([], PRIOR)).toEqual({ mean: 0.4, likeness: 0.2, donors: 0, ownWeight: 0 });
    expect(fitVaryingChance(of10(10, 0), PRIOR).likeness).toBe(0.2);
    expect(fitVaryingChance(of10(5, 5, 5, 5, 5), PRIOR).likeness).toBe(0);
  });
  test('lies between the prior and the programme’s own', () => {
    fc.assert(fc.property(fc.array(fc.nat(10), { minLength: 1, maxLength: 20 }), (successes) => {
      const own = successes.reduce((a, b) => a + b) / (10 * successes.length);
      const { mean } = fitVaryingChance(of10(...successes), PRIOR);
      expect(mean).toBeGreaterThanOrEqual(Math.min(own, PRIOR.mean) - 1e-12);
      expect(mean).toBeLessThanOrEqual(Math.max(own, PRIOR.mean) + 1e-12);
    }));
  });
  test.each([[of10(11), PRIOR], [[], { ...PRIOR, plants: 0 }], [[], { ...PRIOR, mean: 2 }]])('%j with %j is refused', (outcomes, prior) => expect(() => fitVaryingChance(outcomes, prior)).toThrow());
});

describe('one more donor tree, or more cuttings', () => {
  test('worked by hand: two trees, a cutting of each, every second one comes through', () => {
    const { asPlanned, oneMoreTree, moreCuttings } = moreDonorsOrCuttings(2, 1, { mean: 0.5, likeness: 0 });
    // A tree stays out (1/2), or brings two copies that both lack the variant: 1/2 + 1/2 x 0.95^2.
    expect(asPlanned.capture).toBeCloseTo(1 - 0.95125 ** 2, 12);
    expect(oneMoreTree).toMatchObject({ trees: 3, cuttings: 3, capture: expect.closeTo(1 - 0.95125 ** 3, 12) });
    expect(moreCuttings).toMatchObject({ trees: 2, cuttingsPerDonor: 2, capture: expect.closeTo(1 - (0.25 + 0.75 * 0.9025) ** 2, 12) });
  });
  test('one more tree always adds', () => {
    fc.assert(fc.property(fc.integer({ min: 1, max: 30 }), fc.integer({ min: 1, max: 20 }), fc.double({ min: 0.05, max: 0.95, noNaN: true }), fc.double({ min: 0, max: 0.8, noNaN: true }), (trees, cuttings, mean, likeness) => {
      const { asPlanned, oneMoreTree } = moreDonorsOrCuttings(trees, cuttings, { mean, likeness });
      expect(oneMoreTree.capture).toBeGreaterThan(asPlanned.capture);
      expect(oneMoreTree.expectedDonors).toBeGreaterThan(asPlanned.expectedDonors);
    }), { numRuns: 60 });
  });
  test('a frequency of nothing is refused', () => expect(() => moreDonorsOrCuttings(2, 1, { mean: 0.5, likeness: 0 }, undefined, 0)).toThrow(expect.objectContaining({ code: 'diversity/not-a-frequency' })));
});

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Occupancy } from '../time/state-occupancy.ts';
import { calibrationOf, forecast } from './forecast.ts';

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

  test('worked by hand: ten plants of a tree with a chance of 3/5 and likeness 1/4 vary by 3/4 of 12/5 and 1/4 of 24, however they are told', () => {
    const limits = { days: 30, expected: expect.closeTo(6, 12), lower: expect.closeTo(6 - 1.2815515655 * Math.sqrt(7.8), 8), upper: expect.closeTo(6 + 1.2815515655 * Math.sqrt(7.8), 8) };
    for (const lots of [[10], [4, 6]]) expect(forecast(lots.map((plants) => ({ donorId: 'A', plants, days: 30 })), { curve: CURVE, likeness: 0.25 }, [30])).toEqual([limits]);
  });

  test('beyond the day by which all had gone on or died nothing more is promised', () => {
    expect(forecast([{ donorId: 'A', plants: 10, days: 90 }], { curve: [...CURVE, step(90, 0, 0.9)], likeness: 0 }, [30])).toEqual([{ days: 30, expected: 0, lower: 0, upper: 0 }]);
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

  test.each([
    [{ plants: 1.5 }, 'survival/not-a-count'], [{ plants: -1 }, 'survival/not-a-count'], [{ days: -1 }, 'survival/not-a-time'], [{ days: Infinity }, 'survival/not-a-time'], [{ ahead: -1 }, 'survival/not-a-time'],
    [{ ahead: Infinity }, 'survival/not-a-time'], [{ likeness: -0.1 }, 'numbers/not-a-share'], [{ likeness: 1 }, 'numbers/not-a-share'], [{ confidence: 1 }, 'survival/not-a-level'],
  ])('%j is refused', (odd, code) => {
    const { plants, days, ahead, likeness, confidence } = { plants: 10, days: 0, ahead: 30, likeness: 0, confidence: 0.8, ...odd };
    expect(() => forecast([{ donorId: 'A', plants, days }], { curve: CURVE, likeness }, [ahead], confidence)).toThrow(expect.objectContaining({ code }));
  });
});

describe('how past forecasts did', () => {
  test('worked by hand: one of two held, 12 of 20 came', () => {
    expect(calibrationOf([{ expected: 10, lower: 8, upper: 12, came: 9 }, { expected: 10, lower: 8, upper: 12, came: 3 }])).toEqual({ covered: 0.5, ratio: 0.6, forecasts: 2 });
    expect(calibrationOf([])).toEqual({ covered: 0, forecasts: 0 });
  });

  test.each([[7, 0], [8, 1], [12, 1], [13, 0]])('limits from 8 to 12 hold what lies on them: %d came', (came, covered) => {
    expect(calibrationOf([{ expected: 10, lower: 8, upper: 12, came }]).covered).toBe(covered);
  });

  test('where nothing was expected and nothing came, it held, and there is no ratio', () => {
    expect(calibrationOf([{ expected: 0, lower: 0, upper: 0, came: 0 }])).toEqual({ covered: 1, forecasts: 1 });
  });

  test.each(['expected', 'lower', 'upper', 'came'])('a number below nothing or without end is refused: %s', (which) => {
    for (const odd of [-1, Infinity, Number.NaN]) {
      expect(() => calibrationOf([{ expected: 10, lower: 8, upper: 12, came: 9, [which]: odd }])).toThrow(expect.objectContaining({ code: 'numbers/not-a-size' }));
    }
  });
});

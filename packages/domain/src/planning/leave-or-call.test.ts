import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Occupancy } from '../time/state-occupancy.ts';
import { leaveOrCall } from './leave-or-call.ts';

const step = (time: number, here: number, gone: number): Occupancy => ({ time, shares: [here, gone, 1 - here - gone], standardErrors: [0, 0, 0], atRisk: [1, 0, 0] });
/** By day 30 four in ten have rooted and one has died; by day 60 seven have rooted and one more has died. */
const CURVE = [step(30, 0.5, 0.4), step(60, 0.2, 0.7)];

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
  test('worked by hand, month by month: of twenty fresh ones eight by day 30.4 and six more by day 60.9', () => {
    expect(leaveOrCall(20, 0, CURVE)).toEqual({ chance: expect.closeTo(0.7, 12), byMonth: [{ month: 1, expected: expect.closeTo(8, 10) }, { month: 2, expected: expect.closeTo(6, 10) }], nothingBefore: 30 });
  });
  test('where none of the past waited so long, or there is no past, nothing is promised', () => {
    expect(leaveOrCall(20, 95, [...CURVE, step(90, 0, 0.9), step(150, 0, 0.9)])).toEqual({ chance: 0, byMonth: [], nothingBefore: 30 });
    expect(leaveOrCall(20, 10, [])).toEqual({ chance: 0, byMonth: [] });
  });
  test.each([[2.5, 0, 'survival/not-a-count'], [-1, 0, 'survival/not-a-count'], [5, -1, 'survival/not-a-time'], [5, Infinity, 'survival/not-a-time'], [5, Number.NaN, 'survival/not-a-time']])('%d after %d days is refused', (green, days, code) => {
    expect(() => leaveOrCall(green, days, CURVE)).toThrow(expect.objectContaining({ code }));
  });
});

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { DEFAULT_DAYS, STICKINGS_NEEDED, waitingDays } from './waiting-days.ts';

const NONE = { firstRooted: [], firstGoneOn: [], lastGoneOn: [] };

describe('waitingDays', () => {
  test('says what it falls back on: first roots from six weeks, as Plantlife 2011 prints on p. 30', () => {
    expect(waitingDays({}, NONE)).toEqual({
      firstCheck: { days: 6 * 7, basis: 'default' }, verdict: { days: 365, basis: 'default' }, movingOn: { days: 180, basis: 'default' },
    });
  });

  test('takes the middle of five for the first look and moving on, and the ninth of ten for the verdict', () => {
    // Sorted 30 40 50 60 90: the third of five is 50. Of ten the ninth is 290; half of ten is the fifth.
    const ten = [300, 110, 290, 120, 280, 130, 270, 140, 260, 150];
    const told = waitingDays({}, { firstRooted: [90, 30, 60, 40, 50], firstGoneOn: ten, lastGoneOn: ten });

    expect(told.firstCheck).toEqual({ days: 50, basis: 'history', stickings: 5 });
    expect(told.movingOn).toEqual({ days: 150, basis: 'history', stickings: 10 });
    expect(told.verdict).toEqual({ days: 290, basis: 'history', stickings: 10 });
  });

  test('lets what is written down go before history, each day for itself', () => {
    const told = waitingDays({ verdict: 400 }, { firstRooted: [1, 2, 3, 4, 5], firstGoneOn: [], lastGoneOn: [1, 2, 3, 4, 5] });

    expect(told.verdict).toEqual({ days: 400, basis: 'written' });
    expect(told.firstCheck.basis).toBe('history');
    expect(told.movingOn.basis).toBe('default');
  });

  test('four closed stickings are not enough', () => {
    expect(waitingDays({}, { ...NONE, firstRooted: [10, 10, 10, 10] }).firstCheck).toEqual({ days: DEFAULT_DAYS.firstCheck, basis: 'default' });
  });

  test('is a day that was seen, between the earliest and the latest, whatever the order', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 900 }), { minLength: STICKINGS_NEEDED, maxLength: 50 }), (seen) => {
        const { days } = waitingDays({}, { ...NONE, lastGoneOn: seen }).verdict;
        expect(seen).toContain(days);
        expect(seen.filter((day) => day <= days).length / seen.length).toBeGreaterThanOrEqual(0.9);
        expect(waitingDays({}, { ...NONE, lastGoneOn: [...seen].reverse() }).verdict.days).toBe(days);
      }),
    );
  });

  test.each([0, -1, 1.5, Number.NaN])('refuses %d days', (days) => {
    expect(() => waitingDays({ verdict: days }, NONE)).toThrow(expect.objectContaining({ code: 'due/not-a-number-of-days' }));
  });
});

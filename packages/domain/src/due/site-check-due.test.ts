import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { dayAfter } from './day-after.ts';
import { SITE_CHECK_MAY_BE_EARLY_BY, siteCheckDays, siteCheckDue } from './site-check-due.ts';

describe('siteCheckDue', () => {
  test('planted in 2025/26, seasons from October: autumn 2026, spring 2027, autumn 2028, autumn 2030', () => {
    expect(siteCheckDays(2025, 10).map(({ check, dueOn }) => [check, dueOn])).toEqual([
      ['firstSeason', '2026-09-30'], ['secondSpring', '2027-03-31'], ['thirdYear', '2028-09-30'], ['fifthYear', '2030-09-30'],
    ]);
  });

  test('where seasons begin in April or January the same distances hold', () => {
    expect(siteCheckDays(2025, 4).map(({ dueOn }) => dueOn)).toEqual(['2026-03-31', '2026-09-30', '2028-03-31', '2030-03-31']);
    expect(siteCheckDays(2025, 1)[0]?.dueOn).toBe('2025-12-31');
  });

  test.each<[string, string, string | undefined]>([
    ['planted, never looked at', '2025-11-20', 'firstSeason'],
    ['looked at in June: too early for the end of the season', '2026-06-01', 'firstSeason'],
    ['looked at on the first of August: within sixty days', '2026-08-01', 'secondSpring'],
    ['looked at late, in January', '2027-01-15', 'secondSpring'],
    ['looked at in February, which is the spring', '2027-02-01', 'thirdYear'],
    ['a late look covers those before it', '2029-05-01', 'fifthYear'],
    ['after the last', '2030-09-01', undefined],
  ])('%s', (_, lookedOn, check) => {
    expect(siteCheckDue(2025, 10, lookedOn)?.check).toBe(check);
  });

  test('a look on the day it is due closes it, and what comes next is later', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1990, max: 2100 }), fc.integer({ min: 1, max: 12 }), fc.integer({ min: -400, max: 2_500 }), (year, month, days) => {
        const looked = dayAfter(`${year}-12-31`, days);
        const due = siteCheckDue(year, month, looked);
        if (!due) return;
        const next = siteCheckDue(year, month, due.dueOn);
        expect(next === undefined || next.dueOn > due.dueOn).toBe(true);
        expect(looked < dayAfter(due.dueOn, -SITE_CHECK_MAY_BE_EARLY_BY)).toBe(true);
      }),
    );
  });

  test.each([0, 13, 1.5])('refuses month %d', (month) => {
    expect(() => siteCheckDue(2025, month, '2026-01-01')).toThrow(expect.objectContaining({ code: 'due/not-a-month' }));
  });
});

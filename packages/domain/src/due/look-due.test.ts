import { describe, expect, test } from 'vitest';
import { gradeCheckDue, roundDue } from './look-due.ts';
import { putOffOf, showsOn } from './put-off.ts';
import { dayAfter } from './day-after.ts';
import fc from 'fast-check';

test.each([['2026-02-26', 3, '2026-03-01'], ['2024-02-26', 3, '2024-02-29'], ['2026-12-25', 7, '2027-01-01']])('from %s every %i days: %s', (day, every, dueOn) => {
  expect(roundDue(day, every)).toEqual({ kind: 'round', dueOn });
  expect(gradeCheckDue(day, every)).toEqual({ kind: 'gradeCheck', dueOn });
});

test.each([0, -7, 1.5])('an interval of %d days is refused', (every) => {
  expect(() => roundDue('2026-01-01', every)).toThrow(expect.objectContaining({ code: 'due/not-a-number-of-days' }));
});

describe('putting off', () => {
  const offs = [{ dueOn: '2026-03-01', until: '2026-03-10' }, { dueOn: '2026-03-01', until: '2026-04-01' }, { dueOn: '2026-02-01', until: '2027-01-01' }];

  test.each([
    ['the newest of that day holds', '2026-03-01', '2026-03-10'],
    ['of another due day none holds', '2026-03-02', '2026-03-02'],
    ['an old one holds for its own day only', '2026-02-01', '2027-01-01'],
  ])('%s', (_, dueOn, day) => {
    expect(showsOn(dueOn, putOffOf(dueOn, offs))).toBe(day);
  });

  test('never shows a thing before it is due, nor later than somebody said of that very day', () => {
    const day = fc.integer({ min: 0, max: 800 }).map((days) => dayAfter('2026-01-01', days));
    fc.assert(
      fc.property(day, fc.array(fc.record({ dueOn: day, until: day }), { maxLength: 8 }), (dueOn, putOffs) => {
        const shown = showsOn(dueOn, putOffOf(dueOn, putOffs));
        expect(shown >= dueOn).toBe(true);
        if (shown > dueOn) expect(putOffs).toContainEqual({ dueOn, until: shown });
        // The entry that does the work moves the day; from then on nothing is put off.
        expect(showsOn(dayAfter(dueOn, 1_000), putOffOf(dayAfter(dueOn, 1_000), putOffs))).toBe(dayAfter(dueOn, 1_000));
      }),
    );
  });
});

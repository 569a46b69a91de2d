import { DomainError } from '../errors.ts';
import { dayAfter } from './day-after.ts';
import type { Due } from './due.ts';

/**
 * When a place is walked again. A round is done when all that stands there was looked at, so the look that is
 * longest ago decides: a walk that left a batch out leaves the round due.
 *
 * @param oldestLookOn of the batches there, the earliest of their last looks; the opening of a batch is one
 * @param everyDays whole days, at least 1
 * @throws DomainError `due/not-a-number-of-days`
 */
export const roundDue = (oldestLookOn: string, everyDays: number): Due => ({ kind: 'round', dueOn: dayAfter(oldestLookOn, interval(everyDays)) });

/**
 * When a potted batch is looked at for the programme's written grade.
 *
 * @param lastLookOn the last look at the whole batch, or its opening
 * @param everyDays whole days, at least 1
 * @throws DomainError `due/not-a-number-of-days`
 */
export const gradeCheckDue = (lastLookOn: string, everyDays: number): Due => ({ kind: 'gradeCheck', dueOn: dayAfter(lastLookOn, interval(everyDays)) });

function interval(days: number): number {
  if (Number.isSafeInteger(days) && days >= 1) return days;
  throw new DomainError('due/not-a-number-of-days', 'an interval is a whole number of days, at least 1', { days });
}

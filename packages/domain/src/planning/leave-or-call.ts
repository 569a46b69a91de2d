import { isCount } from '../count.ts';
import { DomainError } from '../errors.ts';
import type { Occupancy } from '../time/state-occupancy.ts';

export interface LeaveOrCall {
  /** Chance that a cutting that is still green and unrooted will root at all, as far as the history reaches. */
  readonly chance: number;
  /** Rooted plants expected for each further month, until the history ends. */
  readonly byMonth: readonly { readonly month: number; readonly expected: number }[];
  /** First day since sticking on which anything was ever seen rooted: before it there is nothing to see. Missing where none ever was. */
  readonly nothingBefore?: number;
}

const MONTH = 365.25 / 12;

/**
 * For a tray that is undecided: what waiting brings.
 *
 * @param green cuttings still alive and unrooted
 * @param days since they were stuck
 * @param curve of cuttings: shares still green, rooted, lost by days since sticking, from `stateOccupancy`
 * @throws DomainError `survival/not-a-count` unless green is a whole number; `survival/not-a-time` unless days are 0 or more
 */
export function leaveOrCall(green: number, days: number, curve: readonly Occupancy[]): LeaveOrCall {
  if (!isCount(green)) throw new DomainError('survival/not-a-count', 'cuttings are a whole number', { green });
  if (!(days >= 0 && days < Number.POSITIVE_INFINITY)) throw new DomainError('survival/not-a-time', 'days are 0 or more', { days });
  const rootedBy = (day: number): number => curve.findLast(({ time }) => time <= day)?.shares[1] ?? 0;
  const still = curve.findLast(({ time }) => time <= days)?.shares[0] ?? 1;
  const end = curve.at(-1)?.time ?? 0;
  const first = curve.find(({ shares }) => (shares[1] ?? 0) > 0)?.time;
  const seen = first === undefined ? {} : { nothingBefore: first };
  if (still <= 0) return { chance: 0, byMonth: [], ...seen };
  return {
    chance: Math.min(1, Math.max(0, rootedBy(end) - rootedBy(days)) / still),
    byMonth: Array.from({ length: Math.max(0, Math.ceil((end - days) / MONTH)) }, (_, month) => {
      const [from, to] = [rootedBy(days + month * MONTH), rootedBy(days + (month + 1) * MONTH)];
      return { month: month + 1, expected: (green * (to - from)) / still };
    }),
    ...seen,
  };
}

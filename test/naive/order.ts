import type { Entry } from '@sprigline/domain';

/** Where something stands among all that happened. `rank` is 0 arrivals, 1 deaths, 2 counts and checks, 3 what leaves. */
export interface Standing {
  readonly day: string;
  readonly moment: number;
  readonly rank: number;
  readonly workdayId: string;
  readonly line: number;
  readonly id: string;
}

export const START_OF_DAY = -1;
export const END_OF_DAY = 1440;

/** The minute is worth nothing when the phone's clock was off. */
export const minuteOf = (entry: Entry): number | undefined =>
  entry.clockUnsure === true ? undefined : entry.minute;

export function standing(entry: Entry, rank: number): Standing {
  return {
    day: entry.observedOn,
    moment: minuteOf(entry) ?? (rank === 0 ? START_OF_DAY : END_OF_DAY),
    rank,
    workdayId: entry.workdayId ?? '',
    line: entry.line ?? 0,
    id: entry.id,
  };
}

const KEYS = ['day', 'moment', 'rank', 'workdayId', 'line', 'id'] as const;

/** Negative when `a` happened before `b`. Strings by code unit, never by locale. */
export function before(a: Standing, b: Standing): number {
  for (const key of KEYS) {
    if (a[key] < b[key]) return -1;
    if (a[key] > b[key]) return 1;
  }
  return 0;
}

/** Whole days from one calendar day to a later one. */
export const daysBetween = (from: string, to: string): number =>
  (Date.parse(`${to}T00:00:00Z`) - Date.parse(`${from}T00:00:00Z`)) / 86_400_000;

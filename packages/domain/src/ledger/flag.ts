import type { Flag, FlagCode } from './books.ts';
import type { Entry } from './entry.ts';
import { compareKeys, compareText, type OrderKey, orderKey } from './content-order.ts';
import { daysBetween } from './calendar-day.ts';

/** Raised at an entry for what it is, whatever the books hold. */
export const flagOf = (entry: Entry, code: FlagCode): Flag => ({ code, entryId: entry.id, day: entry.observedOn });

/**
 * Doubts about when it was. A day later than the day of receipt plus one cannot
 * be excused by time zones; a phone's clock that was off is told by the phone.
 */
export function flagsOfTime(entry: Entry): Flag[] {
  const flags: Flag[] = [];
  if (daysBetween(entry.receivedOn, entry.observedOn) > 1) flags.push(flagOf(entry, 'day-in-future'));
  if (entry.clockUnsure) flags.push(flagOf(entry, 'clock-unsure'));
  return flags;
}

/** Flags in the order of the entries they were raised at, then by code. */
export function inContentOrder(flags: readonly Flag[], entries: Iterable<Entry>): Flag[] {
  const keys = new Map<string, OrderKey>();
  for (const entry of entries) keys.set(entry.id, orderKey(entry));
  const byEntry = (a: Flag, b: Flag): number => {
    const [keyOfA, keyOfB] = [keys.get(a.entryId), keys.get(b.entryId)];
    return keyOfA && keyOfB ? compareKeys(keyOfA, keyOfB) : 0;
  };
  return flags.toSorted((a, b) => byEntry(a, b) || compareText(a.code, b.code));
}

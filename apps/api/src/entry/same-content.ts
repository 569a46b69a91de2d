import type { NewEntry } from '@sprigline/contract';
import { isDeepStrictEqual } from 'node:util';
import type { StoredEntry } from './stored-entry.ts';

/**
 * Whether a caller sends again what was written before.
 *
 * When it was written down and by which door it comes are not its content: a form
 * sent a second time has a later clock, and a phone's queue may be emptied at the desk.
 */
export function isSameContent(again: NewEntry, written: StoredEntry): boolean {
  return (
    again.observedOn === written.observedOn &&
    again.minute === written.minute &&
    again.workdayId === written.workdayId &&
    again.line === written.line &&
    again.note === written.note &&
    (again.seenBy === undefined || again.seenBy === written.seenBy) &&
    isDeepStrictEqual(plain(again.saying), plain(written.said))
  );
}

/** What a hold may be on, other than several batches. */
const SUBJECTS = ['batchId', 'placeId', 'donorTreeId', 'tripId', 'mediumLot'];

/** What the caller said: without blanks, and without the batches that the server added to a hold. */
function plain(said: object): unknown {
  const { batchIds, ...own } = JSON.parse(JSON.stringify(said)) as Record<string, unknown>;
  // Without another subject the caller named them.
  return SUBJECTS.some((name) => own[name] !== undefined) ? own : { ...own, batchIds };
}

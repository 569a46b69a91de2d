import { STICKINGS_NEEDED } from '../due/waiting-days.ts';
import type { OwnShare } from './opinion.ts';
import type { PastSticking } from './question.ts';
import type { Range } from './species-row.ts';

/** What own cuttings did that were so; nothing where none of them has an end. */
export function ownShare(past: readonly PastSticking[], isSo: (one: PastSticking) => boolean | undefined): OwnShare | undefined {
  const such = past.filter((one) => one.settled > 0 && isSo(one) === true);
  if (such.length === 0) return undefined;
  return {
    goneOn: such.reduce((sum, { goneOn }) => sum + goneOn, 0),
    settled: such.reduce((sum, { settled }) => sum + settled, 0),
    donors: new Set(such.map(({ donorId }) => donorId)).size,
  };
}

/** Both sides of a question to the past; a sticking of which it was not told is on neither. */
export const bothSides = (past: readonly PastSticking[], isSo: (one: PastSticking) => boolean | undefined) =>
  ({ like: ownShare(past, isSo), unlike: ownShare(past, (one) => { const so = isSo(one); return so === undefined ? undefined : !so; }) });

/** From the smallest to the largest among own stickings that gave a rooted plant; nothing below five of them. */
export function ownRange(past: readonly PastSticking[], of: (one: PastSticking) => number | undefined): Range | undefined {
  const seen = past.filter(({ goneOn }) => goneOn > 0).flatMap((one) => of(one) ?? []);
  return seen.length < STICKINGS_NEEDED ? undefined : [Math.min(...seen), Math.max(...seen)];
}

/** Enough own cuttings, of enough trees, to be heard. A working rule. */
export const isHeard = (share: OwnShare | undefined): share is OwnShare => share !== undefined && share.settled >= 30 && share.donors >= 3;

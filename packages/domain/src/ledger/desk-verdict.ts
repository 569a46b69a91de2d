import type { Books, Flag, FlagCode } from './books.ts';
import { EFFECTS_IN } from './books.ts';

/** Something that cannot be, or that somebody should be asked about, with the numbers to say so. */
export interface Discrepancy {
  readonly code: FlagCode;
  readonly entryId: string;
  readonly day: string;
  /** Plants too many, too few or in doubt, where it is about plants. */
  readonly n?: number | undefined;
  /** Plants that the books held just before that entry booked anything. */
  readonly there: number;
}

/**
 * `refused`: what was said cannot be; nothing but other words will help.
 * `asked`: it may be, but something looks wrong; it is taken when said again with `confirm`.
 */
export interface DeskVerdict {
  readonly verdict: 'fits' | 'asked' | 'refused';
  readonly discrepancies: readonly Discrepancy[];
}

/** More plants than there are, or plants that must not go. */
const IMPOSSIBLE: ReadonlySet<FlagCode> = new Set<FlagCode>([
  'took-more',
  'found-by-count',
  'opening-withdrawn',
  'held-moved',
]);

/** Possible, but more often a slip than true. */
const DOUBTFUL: ReadonlySet<FlagCode> = new Set<FlagCode>([
  'called-by-count',
  'dead-beyond-shortfall',
  'rooted-fell',
  'order-unknown',
  'day-in-future',
]);

/**
 * What the desk answers to entries for one batch, by comparing the books with and without them.
 *
 * A person stands there and can be asked, so what from an outbox would be kept
 * and flagged is not taken. Plants unaccounted for are no discrepancy: to find
 * them gone is what one counts for. Nor are two readings of one day, since two
 * people may well count one tray.
 *
 * @param before the books without the entries
 * @param after the books with them
 * @param entryIds the entries in question, corrections by the id of the entry that they correct
 */
export function deskVerdict(before: Books, after: Books, entryIds: Iterable<string>): DeskVerdict {
  const asked = new Set(entryIds);
  const risen = after.flags.filter((flag) => isNew(flag, before));
  const refused = risen.filter(({ code, entryId }) => IMPOSSIBLE.has(code) && asked.has(entryId));
  if (refused.length > 0) return { verdict: 'refused', discrepancies: withNumbers(refused, after) };

  const doubtful = risen.filter(({ code, entryId }) => (asked.has(entryId) ? DOUBTFUL : IMPOSSIBLE).has(code));
  return { verdict: doubtful.length > 0 ? 'asked' : 'fits', discrepancies: withNumbers(doubtful, after) };
}

/** A doubt that was there before, about no fewer plants, is not the fault of these entries. */
const isNew = (flag: Flag, before: Books): boolean =>
  !before.flags.some(
    ({ code, entryId, n = 0 }) => code === flag.code && entryId === flag.entryId && n >= (flag.n ?? 0),
  );

const withNumbers = (flags: readonly Flag[], books: Books): Discrepancy[] =>
  flags.map((flag) => ({ ...flag, there: balanceBefore(flag.entryId, books) }));

const BRINGS_IN: ReadonlySet<string> = new Set(EFFECTS_IN);

function balanceBefore(entryId: string, { movements }: Books): number {
  const index = movements.findIndex((movement) => movement.entryId === entryId);
  const earlier = index < 0 ? movements : movements.slice(0, index);
  return earlier.reduce((sum, { effect, n }) => (BRINGS_IN.has(effect) ? sum + n : sum - n), 0);
}

import type { BatchIdentity, Books } from '../../src/ledger/books.ts';
import type { Entry, Saying } from '../../src/ledger/entry.ts';
import { replay } from '../../src/ledger/replay.ts';

/** A day, what was said of it, and what else the entry carries. */
export type Line = readonly [day: string, saying: Saying, more?: Partial<Entry>];

/** The batch that all sayings speak of; its opening is the first line. */
export const TRAY: BatchIdentity = {
  id: 'tray',
  stage: 'cutting',
  stickingId: 'sticking',
  openingEntryId: 'e1',
  openingPlaceId: 'bench 1',
};

/** Entries `e1`, `e2`, ... in the order of the lines, received on the day that they speak of. */
export const entriesOf = (lines: readonly Line[]): Entry[] =>
  lines.map(([observedOn, saying, more], index) => ({
    id: `e${index + 1}`,
    observedOn,
    receivedOn: observedOn,
    door: 'outbox',
    saying,
    ...more,
  }));

export const booksOf = (lines: readonly Line[], batch: Partial<BatchIdentity> = {}): Books =>
  replay({ ...TRAY, ...batch }, entriesOf(lines));

/** Movements as `entry effect n`, with the cause of a death. */
export const movementsOf = ({ movements }: Books): string[] =>
  movements.map(({ entryId, effect, n, cause }) => [entryId, effect, n, ...(cause ? [cause] : [])].join(' '));

/** Flags as `entry code n`. */
export const flagsOf = ({ flags }: Books): string[] =>
  flags.map(({ entryId, code, n }) => [entryId, code, ...(n === undefined ? [] : [n])].join(' '));

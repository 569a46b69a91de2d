import type { BatchIdentity, Effect, Flag, FlagCode, Movement } from './books.ts';
import { EFFECTS_IN } from './books.ts';
import { type Count, couldBeAnytime, type Fact } from './fact.ts';
import { type NewestFirst, withNewest } from './newest-first.ts';
import { nothingToldOfRoots, type RootsTold } from './roots-told.ts';
import { neverSeen, type Sights } from './sight.ts';

/**
 * The books of one batch while its facts are being taken in.
 *
 * Never changed: each fact makes a new one. So a second reading of the same day
 * can go back to before the first, and other orders of a day can be tried.
 */
export interface Ledger {
  readonly batch: BatchIdentity;
  /** Whether the opening entry is in the books; a withdrawn one leaves the batch without plants. */
  readonly openingStands: boolean;
  readonly balance: number;
  readonly movements: NewestFirst<Movement>;
  readonly flags: NewestFirst<Flag>;
  /** Unaccounted losses that have not been taken back, newest first. */
  readonly missing: NewestFirst<{ readonly entryId: string; readonly n: number }>;
  /** Plants short at a count, or over at any fact, that another order of the day might explain. */
  readonly discrepancy: number;
  readonly sights: Sights;
  readonly roots: RootsTold;
  readonly notFound: number;
  readonly unconfirmed: boolean;
  readonly liftedOn?: string | undefined;
  readonly calledOn?: string | undefined;
  /** The last count, for as long as another of the same day would be a second reading of it. */
  readonly reading?: Reading | undefined;
}

/**
 * Whole counts of one day with nothing booked between them: several people
 * looked at the same plants, so they are readings of one number.
 */
export interface Reading {
  readonly day: string;
  /** The books before the first of them. A further reading starts again from here. */
  readonly before: Ledger;
  /** The movements after the last of them; as long as they are the same, nothing was booked since. */
  readonly movements: Ledger['movements'];
  readonly first: Count;
  /** The strongest look, and of equally strong ones the last. */
  readonly best: Count;
  /** The best of those that told of roots. */
  readonly ofRoots?: Count | undefined;
  readonly differ: boolean;
}

export const emptyLedger = (batch: BatchIdentity, openingStands: boolean): Ledger => ({
  batch,
  openingStands,
  balance: 0,
  movements: undefined,
  flags: undefined,
  missing: undefined,
  discrepancy: 0,
  sights: neverSeen,
  roots: nothingToldOfRoots(openingStands),
  notFound: 0,
  unconfirmed: false,
});

/** What a movement says beside the number. */
export type Detail = Pick<Movement, 'cause' | 'toStage' | 'undoes' | 'lastSeen'>;

const BRINGS_IN: ReadonlySet<Effect> = new Set(EFFECTS_IN);

/** Books a movement and the balance it leaves. Movements of no plants are not written down. */
export function book(ledger: Ledger, fact: Fact, effect: Effect, n: number, detail: Detail = {}): Ledger {
  if (n === 0) return ledger;

  const movement: Movement = { entryId: fact.entryId, day: fact.day, effect, n, ...detail };
  return {
    ...ledger,
    balance: BRINGS_IN.has(effect) ? ledger.balance + n : ledger.balance - n,
    movements: withNewest(ledger.movements, movement),
  };
}

/** Raises a flag about `n` plants, unless there are none; without `n` it is about no number. */
export function flag(ledger: Ledger, fact: Fact, code: FlagCode, n?: number): Ledger {
  if (n === 0) return ledger;

  const raised: Flag = { code, entryId: fact.entryId, day: fact.day, ...(n !== undefined && { n }) };
  return { ...ledger, flags: withNewest(ledger.flags, raised) };
}

/** `n` plants came up short or over. Where we chose the place of the fact in its day, the choice may be to blame. */
export const wonderAt = (ledger: Ledger, fact: Fact, n: number): Ledger =>
  couldBeAnytime(fact) ? { ...ledger, discrepancy: ledger.discrepancy + n } : ledger;

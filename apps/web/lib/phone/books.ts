import type { PackedBooks } from '@sprigline/contract';
import { type BatchIdentity, type Books, type Entry, replay, type Saying, touchedBatches } from '@sprigline/domain';
import type { EntryToSend } from '../entry-to-send.ts';

/** A device's clock may be off by this much before its minutes say nothing any more. Seconds. */
const CLOCK_MAY_BE_OFF_S = 120;

/** What was logged, as the books read it. The domain's types say what the contract has checked. */
export function asEntry(said: EntryToSend, today: string): Entry {
  const { id, observedOn, minute, workdayId, line, clockOffsetSeconds } = said;
  return {
    id, observedOn, minute, workdayId, line, receivedOn: today, door: 'outbox',
    clockUnsure: minute !== undefined && !(Math.abs(clockOffsetSeconds ?? Infinity) <= CLOCK_MAY_BE_OFF_S),
    saying: withUsualValues(said.saying),
  };
}

/** The contract fills in what may be left out; here nobody has parsed it yet. */
function withUsualValues(saying: EntryToSend['saying']): Saying {
  const usual = { counted: { dead: [] }, checked: { dead: [] }, died: { certainty: 'seen' } };
  return { ...(saying.kind in usual && usual[saying.kind as keyof typeof usual]), ...saying } as Saying;
}

export interface BooksAhead {
  readonly before: Books;
  readonly after: Books;
}

/**
 * The books of a batch as they will be once all that is on this device has arrived: the same
 * replay as on the server.
 *
 * @param own what was logged here, also what has been sent since the books were packed; others do no harm
 * @param without ids of entries to leave out of `before`
 */
export function booksAhead({ batch, entries }: PackedBooks, own: readonly EntryToSend[], without: ReadonlySet<string>, today: string): BooksAhead {
  const packed = entries as unknown as readonly Entry[];
  const known = new Set(packed.map(({ id }) => id));
  const added = own.filter(({ id }) => !known.has(id)).map((entry) => asEntry(entry, today));
  const identity = batch as BatchIdentity;
  return {
    before: replay(identity, [...packed, ...added].filter(({ id }) => !without.has(id))),
    after: replay(identity, [...packed, ...added]),
  };
}

/** Whether something logged is about the batch. */
export const isAbout = (entry: EntryToSend, batchId: string): boolean => touchedBatches(entry.saying as Saying).includes(batchId);

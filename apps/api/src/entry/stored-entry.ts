import type { NewEntry, Saying as Said } from '@sprigline/contract';
import type { Door, Entry, Saying } from '@sprigline/domain';
import type { Author } from './author.ts';

/** An entry as the ledger keeps it: what the replay needs, and who brought it when. */
export interface StoredEntry extends Entry {
  /** The same as `saying`, with all that the replay does not look at. */
  readonly said: Said;
  readonly note?: string | undefined;
  readonly seenBy?: string | undefined;
  readonly writtenBy?: string | undefined;
  readonly deliveredBy: string;
  readonly writtenAt: string;
  readonly receivedAt: string;
  readonly clockOffsetSeconds?: number | undefined;
}

/** The moment of a request, by the database's clock, and which day that is in the programme. */
export interface Receipt {
  readonly at: string;
  readonly day: string;
}

/** A phone's clock may be off by this much before its minutes say nothing any more. */
const CLOCK_MAY_BE_OFF_S = 120;

/** @param reached batches that a hold on something else than a batch reaches */
export function storedEntry(entry: NewEntry, door: Door, author: Author, receipt: Receipt, reached?: readonly string[]): StoredEntry {
  const { id, observedOn, minute, workdayId, line, note, writtenAt, clockOffsetSeconds } = entry;
  const writtenBy = entry.writtenBy ?? author.personId;
  const said: Said = reached ? Object.assign({}, entry.saying, { batchIds: reached }) : entry.saying;
  return {
    id, observedOn, minute, workdayId, line, note, writtenAt, clockOffsetSeconds, door, said,
    saying: asSaying(said),
    // Whoever types a sheet in has not seen what it tells.
    seenBy: entry.seenBy ?? (door === 'import' ? undefined : writtenBy),
    writtenBy,
    deliveredBy: author.deliveredBy,
    receivedAt: receipt.at,
    receivedOn: receipt.day,
    clockUnsure: door === 'outbox' && minute !== undefined && !(Math.abs(clockOffsetSeconds ?? Infinity) <= CLOCK_MAY_BE_OFF_S),
  };
}

/** The contract has checked by then what the domain's types say (a part of a batch names how many and where to). */
export const asSaying = (said: Said): Saying => said as Saying;

/** The entry that a correction is about; an entry that is no correction is about itself. */
export const rootIdOf = ({ id, saying }: Entry): string =>
  saying.kind === 'withdrawn' || saying.kind === 'replaced' ? saying.entryId : id;

/** What is said in the end: of a replacement what it puts instead, of a withdrawal nothing. */
export function saidInTheEnd({ said }: Pick<StoredEntry, 'said'>): Exclude<Said, { kind: 'withdrawn' | 'replaced' }> | undefined {
  if (said.kind === 'withdrawn') return undefined;
  return said.kind === 'replaced' ? said.instead.saying : said;
}

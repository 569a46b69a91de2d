import type { EntryToSend } from '../../lib/entry-to-send.ts';
import type { OutboxItem } from '../../lib/phone/outbox-item.ts';
import { codeOf } from '../../lib/refused.ts';
import type { KnownHere } from './known-here.ts';

/** As long as a note may be. */
const LONGEST = 4_000;

/** What the thing itself is not known by: a note about it would be refused, or wait for it for ever. */
const UNKNOWN = new Set(['batch/unknown', 'batch/there-already', 'entry/unknown', 'entry/names-unknown-record', 'record/no-such-place', 'http/unfit-request']);

/** Refusals of the person, who could not write a note either. */
const OF_THE_PERSON = new Set(['programme/unknown', 'http/not-allowed', 'http/not-found', 'entry/not-for-partners']);

/** Whether a coordinator can be told by a note: not of a note that was refused itself. */
export function canBeGiven({ refusal, work }: OutboxItem): boolean {
  const isNote = work.kind === 'entry' && work.entry.saying.kind === 'noted' && work.entry.saying.notBooked !== undefined;
  return refusal !== undefined && !isNote && !OF_THE_PERSON.has(codeOf(refusal));
}

interface NoteMade {
  readonly id: string;
  /** All that was meant, and why it was refused. */
  readonly text: string;
  readonly observedOn: string;
  readonly writtenAt: string;
}

/** The note that tells a coordinator what could not be booked: about the batch, else the place, else about nothing but the programme. */
export function noteOf(item: OutboxItem, { id, text, observedOn, writtenAt }: NoteMade, known: Pick<KnownHere, 'names' | 'placeOf'>): EntryToSend {
  const code = item.refusal ? codeOf(item.refusal) : '';
  const notBooked = { id: item.id, ...(code === '' ? {} : { code }) };
  return { id, observedOn, writtenAt, saying: { kind: 'noted', ...(UNKNOWN.has(code) ? {} : subjectOf(item, known)), text: text.slice(0, LONGEST), notBooked } };
}

function subjectOf({ work }: OutboxItem, { names, placeOf }: Pick<KnownHere, 'names' | 'placeOf'>): { batchId?: string; placeId?: string } {
  if (work.kind !== 'entry') return {};
  const { batchId, placeId } = work.entry.saying as { batchId?: string; placeId?: string };
  // Only what was packed is in the books for sure: a batch may have begun on this very phone.
  if (batchId !== undefined && placeOf.has(batchId)) return { batchId };
  return placeId !== undefined && names.has(placeId) ? { placeId } : {};
}

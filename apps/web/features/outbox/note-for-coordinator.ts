import type { EntryToSend } from '../../lib/entry-to-send.ts';
import type { OutboxItem } from '../../lib/phone/outbox-item.ts';
import { codeOf } from '../../lib/refused.ts';
import type { KnownHere } from './known-here.ts';

/** As long as what a note says may be, and as long as what is added to an entry may be. */
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
  /** Stands at the end of what is too long for any note, and says where the whole lies. */
  readonly cutWords: string;
  readonly observedOn: string;
  readonly writtenAt: string;
}

/** The note that tells a coordinator what could not be booked: about the batch, else the place, else about nothing but the programme. */
export function noteOf(item: OutboxItem, { id, text, cutWords, observedOn, writtenAt }: NoteMade, known: Pick<KnownHere, 'names' | 'placeOf'>): EntryToSend {
  const code = item.refusal ? codeOf(item.refusal) : '';
  const notBooked = { id: item.id, ...(code === '' ? {} : { code }) };
  const [said, added] = inTwo(text, cutWords);
  return { id, observedOn, writtenAt, ...(added === undefined ? {} : { note: added }), saying: { kind: 'noted', ...(UNKNOWN.has(code) ? {} : subjectOf(item, known)), text: said, notBooked } };
}

/** What is too long for the text of a note goes on in what is added to it; only what is too long for both is cut, and says so. */
function inTwo(text: string, cutWords: string): [string, string?] {
  if (text.length <= LONGEST) return [text];
  const said = startOf(text, LONGEST);
  const rest = text.slice(said.length).trim();
  return [said.trim(), rest.length <= LONGEST ? rest : `${startOf(rest, LONGEST - cutWords.length - 1)}\n${cutWords}`];
}

/** At most so many characters, up to a gap where there is one near, and never half of a sign: the database takes no half ones. */
function startOf(text: string, most: number): string {
  const start = text.slice(0, most);
  const gap = Math.max(start.lastIndexOf('\n'), start.lastIndexOf(' '));
  return gap > most / 2 ? start.slice(0, gap) : start.replace(/[\uD800-\uDBFF]$/, '');
}

/** Calls a note back, for the reason why. */
export const withdrawalOf = ({ id: entryId, observedOn, writtenAt }: EntryToSend, id: string, reason: string): EntryToSend =>
  ({ id, observedOn, writtenAt, saying: { kind: 'withdrawn', entryId, sawVersion: entryId, reason } });

function subjectOf({ work }: OutboxItem, { names, placeOf }: Pick<KnownHere, 'names' | 'placeOf'>): { batchId?: string; placeId?: string } {
  if (work.kind !== 'entry') return {};
  const { batchId, placeId } = work.entry.saying as { batchId?: string; placeId?: string };
  // Only what was packed is in the books for sure: a batch may have begun on this very phone.
  if (batchId !== undefined && placeOf.has(batchId)) return { batchId };
  return placeId !== undefined && names.has(placeId) ? { placeId } : {};
}

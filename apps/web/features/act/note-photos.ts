import { takeBackHere } from '../../lib/phone/device.ts';
import type { EntryToSend } from '../../lib/entry-to-send.ts';
import { keepEntries } from '../../lib/phone/keep-entries.ts';
import { photoWork, type PhotoSubject, type SmallPhoto } from '../../lib/phone/photo-work.ts';

/** What is kept, or taken back, in one step. */
export interface ToWrite {
  readonly programme: string;
  /** In the words of the label. */
  readonly about: string;
  /** Why something that went out already is withdrawn. */
  readonly reason: string;
  readonly entry: EntryToSend;
  readonly photos: readonly SmallPhoto[];
  /** Who took them, unless the entry names who did. */
  readonly takenBy: string;
}

/** Photos alone say something; a note without words says nothing. */
export const isSilent = ({ saying }: EntryToSend): boolean => saying.kind === 'noted' && (saying.text ?? '') === '';

/** An entry and the photos that go with it, all of it or nothing. Resolves once it is on disk. */
export async function keepWithPhotos({ programme, about, reason, entry, photos, takenBy }: ToWrite): Promise<void> {
  const isNote = entry.saying.kind === 'noted' && !isSilent(entry);
  const subject = { ...subjectOf(entry), ...(isNote ? { noteId: entry.id } : {}) };
  const behind = photos.map((photo) => photoWork(programme, photo, subject, { about, takenOn: entry.observedOn, takenBy: entry.seenBy ?? takenBy }));
  await keepEntries({ programme, about, reason }, isSilent(entry) ? [] : [entry], undefined, behind);
}

/** Deletes what has not gone out; of what has, the entry is withdrawn, and photos are for the desk to take down. */
export async function takeBackWithPhotos({ programme, about, reason, entry, photos }: ToWrite): Promise<void> {
  await takeBackHere(photos.map(({ id }) => id));
  if (!isSilent(entry)) await keepEntries({ programme, about, reason }, [], { entries: [entry], versions: {}, ids: [entry.id] });
}

function subjectOf({ saying }: EntryToSend): PhotoSubject {
  const { batchId, placeId } = saying as { batchId?: string; placeId?: string };
  if (batchId !== undefined) return { batchId };
  return placeId === undefined ? {} : { placeId };
}

import { newId } from '../new-id.ts';
import { apiPath } from './ask.ts';
import type { Logged } from './device.ts';

/** A photo that was made small and is not kept yet. */
export interface SmallPhoto {
  readonly id: string;
  /** A JPEG that was drawn anew: nothing of the file that was chosen is in it. */
  readonly bytes: ArrayBuffer;
}

/** What it shows: one of the three; and the note that it belongs to. */
export interface PhotoSubject {
  readonly batchId?: string;
  readonly donorTreeId?: string;
  readonly placeId?: string;
  readonly noteId?: string;
  /** Of a tray, the whole of it from above. */
  readonly kind?: 'portrait';
}

type Shrink = (file: Blob) => Promise<{ readonly blob: Blob }>;
const shrinkLater: Shrink = async (file) => (await import('../picture/shrink-picture.ts')).shrinkPicture(file);

/**
 * Draws a chosen picture anew, so that its place, its time and its camera stay behind. One at a time: a large one fills a cheap phone.
 *
 * @param shrink another one in tests, where nothing can be drawn
 * @throws UnreadablePicture for what this phone cannot read
 */
export async function smallPhoto(file: Blob, shrink = shrinkLater): Promise<SmallPhoto> {
  return { id: newId(), bytes: await (await shrink(file)).blob.arrayBuffer() };
}

/** How a photo lies in the outbox: behind what it belongs to, which has to be kept before it or with it. */
export function photoWork(programme: string, { id, bytes }: SmallPhoto, subject: PhotoSubject, { about, takenOn, takenBy }: { readonly about: string; readonly takenOn: string; readonly takenBy: string }): Logged {
  const asked = new URLSearchParams({ ...subject, takenOn, takenBy });
  return { id, about, work: { kind: 'photo', path: `${apiPath(programme, 'photos', id)}?${asked.toString()}`, type: 'image/jpeg', bytes } };
}

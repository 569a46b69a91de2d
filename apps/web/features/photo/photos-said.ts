import { derivedId } from '../../lib/derived-id.ts';
import type { UncheckedEntry } from '../../lib/entry-said.ts';
import { isTicked, text } from '../../lib/form-values.ts';
import { type PhotoSubject, SUBJECT_FIELD } from './subject.ts';

export interface PhotoToSend {
  readonly id: string;
  readonly query: URLSearchParams;
  readonly file: File;
}

/** What a form says of its photos: the note that they share, where one was written, and each with what the API is told of it. */
export function photosSaid(form: FormData, { noun, id }: PhotoSubject): { readonly note: UncheckedEntry | undefined; readonly photos: readonly PhotoToSend[] } {
  const [batchOf, words, takenOn] = [text(form, 'id') ?? '', text(form, 'text'), text(form, 'takenOn')];
  const subject = { [SUBJECT_FIELD[noun]]: id };
  const note = words === undefined ? undefined : { id: text(form, 'noteId') ?? '', observedOn: takenOn, writtenAt: text(form, 'writtenAt'), saying: { kind: 'noted', ...subject, text: words } };
  const query = new URLSearchParams({
    ...subject,
    takenOn: takenOn ?? '',
    ...(note ? { noteId: note.id } : {}),
    ...(isTicked(form, 'portrait') ? { kind: 'portrait' } : {}),
    // Elsewhere nobody is asked.
    ...(noun === 'donor-trees' ? { showsWhere: isTicked(form, 'showsWhere') ? 'yes' : 'no' } : {}),
  });
  const files = form.getAll('photos').filter((file): file is File => file instanceof File && (file.size > 0 || file.name !== ''));
  // The same form sent again makes the same ids, and keeps nothing twice.
  return { note, photos: files.map((file, at) => ({ id: derivedId(batchOf, String(at)), query, file })) };
}

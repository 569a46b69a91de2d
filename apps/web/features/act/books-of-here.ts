import { type BooksAhead, booksAhead } from '../../lib/phone/books.ts';
import type { EntryToSend } from '../../lib/entry-to-send.ts';
import type { BatchHere } from '../../lib/phone/batch-here.ts';
import type { FieldPackNow } from './use-field-pack.ts';

/**
 * The books of a batch with all that was logged here, and whether it is held by them.
 *
 * @param entryId the entry whose effect is asked for: it is left out of `before`
 * @param also an entry that is being told and was not kept yet
 */
export function booksOfHere({ books, isHeld }: BatchHere, { entries, today }: Pick<FieldPackNow, 'entries' | 'today'>, entryId?: string, also?: EntryToSend): { readonly ahead: BooksAhead | undefined; readonly isHeld: boolean } {
  const told = also ? [...entries.filter(({ id }) => id !== also.id), also] : entries;
  const ahead = books && booksAhead(books, told, new Set(entryId === undefined ? [] : [entryId]), today);
  // A place or a donor tree can be held as well, of which the books of a batch know nothing.
  return { ahead, isHeld: isHeld || (ahead?.after.heldBy.length ?? 0) > 0 };
}

import type { PackedBooks } from '@sprigline/contract';
import { useCallback } from 'react';
import { type BooksAhead, booksAhead } from './books.ts';
import type { OutboxItem, SentItem } from './outbox-item.ts';
import { useOwn } from './use-own.ts';

/** What became of one entry: on this phone, at the server, or not taken. */
export type Whereabouts = Pick<OutboxItem, 'refusal' | 'decided'> | Pick<SentItem, 'status' | 'flags'>;

export interface BooksHere {
  /** As they were without what was told of the batch, and as they will be. Nothing where the phone has no books of it. */
  readonly ahead: BooksAhead | undefined;
  readonly whereabouts: readonly Whereabouts[];
}

/** @param ids entries of one answer, corrections too */
export type BooksOf = (batchId: string, ids: readonly string[]) => BooksHere;

interface BooksHereQuestion {
  readonly programme: string;
  readonly books: readonly PackedBooks[];
  readonly today: string;
}

/** The books as this phone has them, with all that was logged on it. */
export function useBooksHere({ programme, books, today }: BooksHereQuestion): BooksOf {
  const own = useOwn(programme);

  return useCallback((batchId, ids) => {
    const packed = books.find(({ batch }) => batch.id === batchId);
    // What the server did not take is in no books.
    const entries = own.flatMap((item) => (item.work.kind === 'entry' && !('refusal' in item && item.refusal) ? [item.work.entry] : []));
    return {
      ahead: packed && booksAhead(packed, entries, new Set(ids), today),
      whereabouts: own.filter(({ id }) => ids.includes(id)),
    };
  }, [own, books, today]);
}

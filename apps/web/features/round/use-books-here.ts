import { useCallback, useEffect, useState } from 'react';
import { type BooksAhead, booksAhead } from '../../lib/phone/books.ts';
import { onNews } from '../../lib/phone/news.ts';
import type { OutboxItem, SentItem } from '../../lib/phone/outbox-item.ts';
import { sentLately, unsent } from '../../lib/phone/outbox.ts';
import { theStore } from '../../lib/phone/store.ts';
import type { RoundProps } from './round-screen.tsx';

/** What became of one entry: on this phone, at the server, or not taken. */
export type Whereabouts = Pick<OutboxItem, 'refusal'> | Pick<SentItem, 'status' | 'flags'>;

export interface BooksHere {
  /** As they were without what was told of the batch, and as they will be. Nothing where the phone has no books of it. */
  readonly ahead: BooksAhead | undefined;
  readonly whereabouts: readonly Whereabouts[];
}

/** @param ids entries of one answer, corrections too */
export type BooksOf = (batchId: string, ids: readonly string[]) => BooksHere;

/** The books as this phone has them, with all that was logged on it. */
export function useBooksHere({ programme, books, today }: Pick<RoundProps, 'programme' | 'books' | 'today'>): BooksOf {
  const [own, setOwn] = useState<readonly (OutboxItem | SentItem)[]>([]);

  useEffect(() => {
    let isGone = false;
    const read = async (): Promise<void> => {
      const store = await theStore();
      const [waiting, sent] = await Promise.all([unsent(store), sentLately(store)]);
      if (!isGone) setOwn([...waiting, ...sent].filter((item) => item.programme === programme));
    };
    const look = (): void => void read().catch(() => undefined);
    look();
    const stop = onNews(look);
    return () => {
      isGone = true;
      stop();
    };
  }, [programme]);

  return useCallback((batchId, ids) => {
    const packed = books.find(({ batch }) => batch.id === batchId);
    const entries = own.flatMap(({ work }) => (work.kind === 'entry' ? [work.entry] : []));
    return {
      ahead: packed && booksAhead(packed, entries, new Set(ids), today),
      whereabouts: own.filter(({ id }) => ids.includes(id)),
    };
  }, [own, books, today]);
}

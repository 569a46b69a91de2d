import { useEffect, useState } from 'react';
import type { EntryToSend } from '../entry-to-send.ts';
import { onNews } from './news.ts';
import type { OutboxItem, SentItem } from './outbox-item.ts';
import { allHere, sentLately } from './outbox.ts';
import { theStore } from './store.ts';

/** Something logged on this device: still only here, or sent lately. */
export type OwnItem = OutboxItem | SentItem;

/** What was logged on this device for a programme, kept up with what changes. What was sent stands last, newest first. */
export function useOwn(programme: string): readonly OwnItem[] {
  const [own, setOwn] = useState<readonly OwnItem[]>([]);

  useEffect(() => {
    let isGone = false;
    const read = async (): Promise<void> => {
      const store = await theStore();
      const [waiting, sent] = await Promise.all([allHere(store), sentLately(store)]);
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

  return own;
}

/** Entries that the books have or will have: what the server did not take is in none. */
export const standing = (own: readonly OwnItem[]): EntryToSend[] =>
  own.flatMap((item) => (item.work.kind === 'entry' && !('refusal' in item && item.refusal !== undefined) ? [item.work.entry] : []));

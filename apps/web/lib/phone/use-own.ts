import { useCallback } from 'react';
import type { EntryToSend } from '../entry-to-send.ts';
import type { OutboxItem, SentItem } from './outbox-item.ts';
import { allHere, sentLately } from './outbox.ts';
import type { Store } from './store.ts';
import { useKept } from './use-kept.ts';

/** Something logged on this device: still only here, or sent lately. */
export type OwnItem = OutboxItem | SentItem;

const NOTHING: readonly OwnItem[] = [];

/** What was logged on this device for a programme, kept up with what changes. What was sent stands last, newest first. */
export const useOwn = (programme: string): readonly OwnItem[] => useKept(useCallback(async (store: Store) => {
  const [waiting, sent] = await Promise.all([allHere(store), sentLately(store)]);
  return [...waiting, ...sent].filter((item) => item.programme === programme);
}, [programme]), NOTHING);

/** Entries that the books have or will have: what the server did not take is in none. */
export const standing = (own: readonly OwnItem[]): EntryToSend[] =>
  own.flatMap((item) => (item.work.kind === 'entry' && !('refusal' in item && item.refusal !== undefined) ? [item.work.entry] : []));

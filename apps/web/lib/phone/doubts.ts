import type { SentItem } from './outbox-item.ts';
import { sentLately } from './outbox.ts';
import type { Store } from './store.ts';

/** The books took it, and something about it looks wrong, or it waits for another entry. */
export const isDoubtful = ({ flags, status }: Pick<SentItem, 'flags' | 'status'>): boolean => flags.length > 0 || status === 'waiting';

const SEEN = 'doubts-seen-at';

/** How many of what this device sent came out doubtful since somebody last looked at what was sent. */
export async function newDoubts(store: Store): Promise<number> {
  const seenAt = Number((await store.get('settings', SEEN)) ?? 0);
  return (await sentLately(store)).filter((item) => isDoubtful(item) && item.sentAt > seenAt).length;
}

/** @param now milliseconds since 1970 by this device's clock */
export async function markDoubtsSeen(store: Store, now: number): Promise<void> {
  await store.put('settings', now, SEEN);
}

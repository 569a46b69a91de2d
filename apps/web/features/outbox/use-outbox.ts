import { useEffect } from 'react';
import type { OutboxItem } from '../../lib/phone/outbox-item.ts';
import { unsent } from '../../lib/phone/outbox.ts';
import type { Ending } from '../../lib/phone/sender.ts';
import { endingOfLastTry, sendAtEveryChance } from '../../lib/phone/sending.ts';
import type { Store } from '../../lib/phone/store.ts';
import { useKept } from '../../lib/phone/use-kept.ts';

export interface Outbox {
  /** In the order in which they were logged. */
  readonly items: readonly OutboxItem[];
  /** Of the last try to send them. */
  readonly ending: Ending | undefined;
}

/** What is only on this phone; as long as somebody looks, it is sent at every chance. */
export function useOutbox(): Outbox | undefined {
  useEffect(sendAtEveryChance, []);
  return useKept<Outbox | undefined>(outboxIn, undefined);
}

const outboxIn = async (store: Store): Promise<Outbox> => ({ items: await unsent(store), ending: endingOfLastTry() });

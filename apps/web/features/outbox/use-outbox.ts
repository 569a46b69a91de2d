import { useEffect, useState } from 'react';
import { onNews } from '../../lib/phone/news.ts';
import type { OutboxItem } from '../../lib/phone/outbox-item.ts';
import { unsent } from '../../lib/phone/outbox.ts';
import type { Ending } from '../../lib/phone/sender.ts';
import { endingOfLastTry, sendAtEveryChance } from '../../lib/phone/sending.ts';
import { theStore } from '../../lib/phone/store.ts';

export interface Outbox {
  /** In the order in which they were logged. */
  readonly items: readonly OutboxItem[];
  /** Of the last try to send them. */
  readonly ending: Ending | undefined;
}

/** What is only on this phone; as long as somebody looks, it is sent at every chance. */
export function useOutbox(): Outbox | undefined {
  const [outbox, setOutbox] = useState<Outbox>();
  useEffect(() => {
    const look = (): void => {
      theStore().then(unsent).then((items) => setOutbox({ items, ending: endingOfLastTry() }), () => undefined);
    };
    look();
    const [stopListening, stopSending] = [onNews(look), sendAtEveryChance()];
    return () => {
      stopListening();
      stopSending();
    };
  }, []);
  return outbox;
}

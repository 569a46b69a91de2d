import { useEffect, useState } from 'react';
import { decidedHere } from '../../lib/phone/decide.ts';
import { onNews } from '../../lib/phone/news.ts';
import type { OutboxItem } from '../../lib/phone/outbox-item.ts';
import { theStore } from '../../lib/phone/store.ts';

/** What was not taken and then decided about, the newest decision first. */
export function useDecided(): readonly OutboxItem[] {
  const [items, setItems] = useState<readonly OutboxItem[]>([]);
  useEffect(() => {
    const look = (): void => void theStore().then(decidedHere).then(setItems, () => undefined);
    look();
    return onNews(look);
  }, []);
  return items;
}

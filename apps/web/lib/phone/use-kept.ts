import { useEffect, useState } from 'react';
import { onNews } from '../../lib/phone/news.ts';
import { type Store, theStore } from '../../lib/phone/store.ts';

/** What is read from this phone, and read again whenever something on it changes. @param read one and the same at each call */
export function useKept<T>(read: (store: Store) => Promise<T>, nothing: T): T {
  const [kept, setKept] = useState(nothing);
  useEffect(() => {
    const look = (): void => void theStore().then(read).then(setKept, () => undefined);
    look();
    return onNews(look);
  }, [read]);
  return kept;
}

import { useEffect, useState } from 'react';
import { onNews } from './news.ts';
import { type Store, theStore } from './store.ts';

/**
 * What is read from this phone, and read again whenever something on it changes. Where reading fails, what was read before stays.
 *
 * @param read one and the same at each call, as long as it reads the same
 */
export function useKept<T>(read: (store: Store) => Promise<T>, nothing: T): T {
  const [kept, setKept] = useState(nothing);
  useEffect(() => {
    let isGone = false;
    const look = (): void => void theStore().then(read).then((found) => isGone || setKept(() => found), () => undefined);
    look();
    const stop = onNews(look);
    return () => {
      isGone = true;
      stop();
    };
  }, [read]);
  return kept;
}

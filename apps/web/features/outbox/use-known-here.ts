import { useEffect, useState } from 'react';
import { onNews } from '../../lib/phone/news.ts';
import { theStore } from '../../lib/phone/store.ts';
import { type KnownHere, knownHere } from './known-here.ts';

const NOTHING: KnownHere = { names: new Map(), placeOf: new Map(), zones: new Map(), own: new Map() };

/** Names for what stands in the outbox; without any, what has to be told is told without names. */
export function useKnownHere(): KnownHere {
  const [known, setKnown] = useState(NOTHING);
  useEffect(() => {
    const look = (): void => void theStore().then(knownHere).then(setKnown, () => undefined);
    look();
    return onNews(look);
  }, []);
  return known;
}

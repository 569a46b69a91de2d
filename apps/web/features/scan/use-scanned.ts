import { useEffect, useRef, useState } from 'react';
import { newId } from '../../lib/new-id.ts';
import { keptScanned, nothingScanned, type Scanned } from './scanned.ts';

const keyOf = (programme: string, personId: string): string => `sprigline/scanned/1/${programme}/${personId}`;

interface ScannedUse {
  readonly list: Scanned;
  /** The list as it is at this moment, for what was still being looked up when it changed. */
  readonly now: () => Scanned;
  readonly change: (step: (list: Scanned) => Scanned) => void;
}

/**
 * The list of what was scanned, kept on this device until it is written: a page left by accident loses nothing.
 *
 * @param sent the list that was written last; it is cleared away
 */
export function useScanned(programme: string, personId: string, sent: string | undefined): ScannedUse {
  const [list, setList] = useState(() => nothingScanned(''));
  const now = useRef(list);

  function set(next: Scanned): void {
    now.current = next;
    setList(next);
    try {
      localStorage.setItem(keyOf(programme, personId), JSON.stringify(next));
    } catch {
      // A private window keeps it as long as the page is open.
    }
  }

  useEffect(() => {
    let kept: Scanned | undefined;
    try {
      kept = keptScanned(localStorage.getItem(keyOf(programme, personId)));
    } catch {
      // Nothing can be kept here.
    }
    const next = kept && kept.id !== sent ? kept : nothingScanned(newId());
    now.current = next;
    setList(next);
  }, [programme, personId, sent]);

  return { list, now: () => now.current, change: (step) => set(step(now.current)) };
}

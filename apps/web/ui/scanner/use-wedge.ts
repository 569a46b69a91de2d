import { useEffect, useRef } from 'react';
import { NO_KEYS, wedgeKey } from './wedge.ts';

/**
 * Hears a scanner that types like a keyboard, wherever the focus is, except in a field: there the keys belong to the field.
 *
 * @param onRead what it sent, without the key that ended it
 */
export function useWedge(onRead: (text: string) => void): void {
  const read = useRef(onRead);
  useEffect(() => { read.current = onRead; });
  useEffect(() => {
    let wedge = NO_KEYS;
    function hear(event: KeyboardEvent): void {
      if (event.ctrlKey || event.metaKey || event.altKey || event.isComposing || isField(event.target)) {
        wedge = NO_KEYS;
        return;
      }
      const heard = wedgeKey(wedge, event.key, event.timeStamp);
      wedge = heard.wedge;
      if (heard.code === undefined) return;
      // The Enter that ended it must not press the button that has the focus.
      event.preventDefault();
      event.stopPropagation();
      read.current(heard.code);
    }
    document.addEventListener('keydown', hear, true);
    return () => document.removeEventListener('keydown', hear, true);
  }, []);
}

const isField = (target: EventTarget | null): boolean => target instanceof HTMLElement && (target.isContentEditable || /^(INPUT|TEXTAREA|SELECT)$/.test(target.tagName));

'use client';

import { useEffect } from 'react';

/** A keyboard types into the marked field, wherever the focus is: a desk needs no keypad. What is typed into a field of the browser's own stays there. */
export function useTypedFigures(press: (key: string) => void): void {
  useEffect(() => {
    function typed(event: KeyboardEvent) {
      if (event.ctrlKey || event.metaKey || event.altKey || isTakenBy(event.target)) return;
      if (/^\d$/.test(event.key)) press(event.key);
      else if (event.key === 'Backspace') press('back');
      else return;
      event.preventDefault();
    }
    window.addEventListener('keydown', typed);
    return () => window.removeEventListener('keydown', typed);
  }, [press]);
}

const isTakenBy = (target: EventTarget | null): boolean =>
  target instanceof HTMLTextAreaElement || target instanceof HTMLSelectElement || (target instanceof HTMLInputElement && !['radio', 'checkbox'].includes(target.type));

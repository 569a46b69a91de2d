'use client';

import { useEffect } from 'react';

/** A keyboard types into the marked field, wherever the focus is: a desk needs no keypad. */
export function useTypedFigures(press: (key: string) => void): void {
  useEffect(() => {
    function typed(event: KeyboardEvent) {
      if (event.ctrlKey || event.metaKey || event.altKey) return;
      if (/^\d$/.test(event.key)) press(event.key);
      else if (event.key === 'Backspace') press('back');
      else return;
      event.preventDefault();
    }
    window.addEventListener('keydown', typed);
    return () => window.removeEventListener('keydown', typed);
  }, [press]);
}

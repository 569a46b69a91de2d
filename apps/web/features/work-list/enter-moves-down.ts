import type { KeyboardEvent } from 'react';

/**
 * Enter goes to the same column of the next line, Shift and Enter to the line before; after the last one to the
 * button that saves. Numbers are typed down a column as they stand on paper, without a hand on the mouse.
 */
export function enterMovesDown(event: KeyboardEvent<HTMLFormElement>): void {
  const { target } = event;
  if (event.key !== 'Enter' || !(target instanceof HTMLElement) || target.dataset['column'] === undefined) return;
  event.preventDefault();
  const column = [...event.currentTarget.querySelectorAll<HTMLElement>(`[data-column="${target.dataset['column']}"]`)];
  const next = column[column.indexOf(target) + (event.shiftKey ? -1 : 1)] ?? (event.shiftKey ? target : event.currentTarget.querySelector<HTMLElement>('[data-saves]'));
  next?.focus();
  if (next instanceof HTMLInputElement) next.select();
}

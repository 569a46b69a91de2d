import type { OutboxItem } from './outbox-item.ts';

/** So many entries a request: small enough that a weak signal carries one, and that a lost answer costs little. */
const MOST = 50;

/** Neighbours that go out in one request: entries of one programme together, everything else for itself. The order stays. */
export function portions(items: readonly OutboxItem[]): OutboxItem[][] {
  const parts: OutboxItem[][] = [];
  for (const item of items) {
    const last = parts.at(-1);
    const before = last?.[0];
    const fits = before?.work.kind === 'entry' && item.work.kind === 'entry' && before.programme === item.programme && last && last.length < MOST;
    if (fits) last.push(item);
    else parts.push([item]);
  }
  return parts;
}

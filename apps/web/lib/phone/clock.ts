import type { Store } from './store.ts';

const KEY = 'clock-offset-s';

/** How far this device's clock is from the server's, in seconds, as last heard; nothing while it never asked. */
export async function clockOffset(store: Store): Promise<number | undefined> {
  const offset = await store.get('settings', KEY);
  return typeof offset === 'number' ? offset : undefined;
}

/**
 * Learns it from an answer.
 *
 * @param date the answer's `Date`, which knows whole seconds
 * @param now what this device's clock shows, in milliseconds since 1970
 */
export async function learnClock(store: Store, date: string | null, now: number): Promise<void> {
  const server = date === null ? Number.NaN : Date.parse(date);
  if (Number.isFinite(server)) await store.put('settings', Math.round((now - server) / 1000), KEY);
}

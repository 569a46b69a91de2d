import { announce } from './news.ts';
import type { Store } from './store.ts';

const SHARED = 'is-shared';

/** So long without a touch, a shared device asks who is there. */
export const IDLE_MS = 5 * 60 * 1000;

/** Whether somebody has marked this device as one that several people log on. */
export const isShared = async (store: Store): Promise<boolean> => (await store.get('settings', SHARED)) === true;

export async function markShared(store: Store, is: boolean): Promise<void> {
  await store.put('settings', is, SHARED);
  announce();
}

/** @param lastTouch as it was kept; nothing, or what lies in the future, is no touch. Milliseconds since 1970 */
export const isIdle = (lastTouch: number | undefined, now: number): boolean => lastTouch === undefined || lastTouch > now + IDLE_MS || now - lastTouch >= IDLE_MS;

const TOUCH = 'sprigline/last-touch';

/** Kept through closing and opening again, so that a reload opens nothing. */
export function lastTouch(storage: Pick<Storage, 'getItem'>): number | undefined {
  const kept = Number(storage.getItem(TOUCH) ?? Number.NaN);
  return Number.isFinite(kept) ? kept : undefined;
}

export function keepTouch(storage: Pick<Storage, 'setItem'>, now: number): void {
  try {
    storage.setItem(TOUCH, String(now));
  } catch {
    // Full: then it asks sooner, which loses nothing.
  }
}

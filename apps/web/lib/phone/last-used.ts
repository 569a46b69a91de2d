import type { Store } from './store.ts';

/** What was chosen or typed last on this device, newest first, so that it is a tap and no typing the next time. Never a count. */
export interface LastUsed {
  readonly placeId: readonly string[];
  readonly container: readonly string[];
  readonly medium: readonly string[];
  readonly reason: readonly string[];
}

const NOTHING: LastUsed = { placeId: [], container: [], medium: [], reason: [] };
const MOST = 4;
const keyOf = (programme: string): string => `last-used/${programme}`;

export async function lastUsed(store: Store, programme: string): Promise<LastUsed> {
  return { ...NOTHING, ...((await store.get('settings', keyOf(programme))) as Partial<LastUsed> | undefined) };
}

/** @param used what was chosen this time; what is blank or left out changes nothing */
export async function rememberUsed(store: Store, programme: string, used: Readonly<Partial<Record<keyof LastUsed, string | undefined>>>): Promise<void> {
  await store.put('settings', usedAfter(await lastUsed(store, programme), used), keyOf(programme));
}

export function usedAfter(before: LastUsed, used: Readonly<Partial<Record<keyof LastUsed, string | undefined>>>): LastUsed {
  const first = (name: keyof LastUsed): string[] => {
    const now = used[name]?.trim();
    return now ? [now, ...before[name].filter((one) => one !== now)].slice(0, MOST) : [...before[name]];
  };
  return { placeId: first('placeId'), container: first('container'), medium: first('medium'), reason: first('reason') };
}

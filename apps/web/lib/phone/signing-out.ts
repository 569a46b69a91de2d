import { WHO } from './device.ts';
import { announce } from './news.ts';
import { unsent } from './outbox.ts';
import { dropCode } from './own-code.ts';
import { allPacked } from './packing.ts';
import type { Store } from './store.ts';

/**
 * Takes off this device what was here for whoever signs out: packs, and their own code. Codes of others
 * stay, and so does what is unsent, under the names it was logged with: it goes out when somebody signs in.
 */
export async function clearForSigningOut(store: Store): Promise<void> {
  const { packs } = await allPacked(store);
  await Promise.all(packs.map(({ me }) => dropCode(store, me.personId)));
  // Who was chosen to log was chosen among the people of a pack.
  const chosen = await store.getAllKeys('settings', IDBKeyRange.bound(WHO, `${WHO}\uffff`));
  await Promise.all(chosen.map((key) => store.delete('settings', key)));
  await unpack(store);
  announce();
}

/** Forgets what can be fetched again. What was logged here stays. */
async function unpack(store: Store): Promise<void> {
  const writing = store.transaction(['packs', 'walks'], 'readwrite');
  await Promise.all([writing.objectStore('packs').clear(), writing.objectStore('walks').clear()]);
  await writing.done;
}

/** How many entries, records and photos are only on this device. */
export const unsentHere = async (store: Store): Promise<number> => (await unsent(store)).length;

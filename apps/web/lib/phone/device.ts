import { clockOffset } from './clock.ts';
import { announce } from './news.ts';
import type { Author, ToKeep, Work } from './outbox-item.ts';
import { keep, takeBack } from './outbox.ts';
import { packOf } from './packing.ts';
import { type Store, theStore } from './store.ts';

/** So long something logged stays here, to be undone without a trace. */
export const UNDO_MS = 10_000;

/** Something logged, before it is known who logs here. */
export type Logged = Pick<ToKeep, 'id' | 'about'> & { readonly work: Work };

/**
 * Keeps what was logged on this device, under whoever logs here. Resolves once it is on disk.
 *
 * @returns ids that have gone out already: nothing was kept, they need corrections
 */
export async function keepHere(programme: string, logged: readonly Logged[]): Promise<string[]> {
  const store = await theStore();
  const author = await authorHere(store, programme);
  const offset = await clockOffset(store);
  const out = await keep(store, logged.map((one) => ({ ...one, programme, author, work: onThisClock(one.work, offset) })), Date.now());
  announce();
  void askToStay(store);
  void sendInBackground().catch(() => undefined);
  return out;
}

/** Where the browser can send after the page was closed, it is asked to; everywhere else it is sent at the next visit. */
async function sendInBackground(): Promise<void> {
  const registration = await navigator.serviceWorker?.getRegistration();
  await (registration as { sync?: { register: (tag: string) => Promise<void> } } | undefined)?.sync?.register('outbox');
}

/** @returns ids that have gone out already, and need a correction */
export async function takeBackHere(ids: readonly string[]): Promise<string[]> {
  const out = await takeBack(await theStore(), ids);
  announce();
  return out;
}

/** Before the programme, where it is kept. */
export const WHO = 'who-logs/';

/** Whom somebody chose here; nothing: whoever is signed in. */
export const chosenAuthor = async (store: Store, programme: string): Promise<Author | undefined> => (await store.get('settings', `${WHO}${programme}`)) as Author | undefined;

/** Who logs on this device: whom somebody chose here, else who was signed in when it was packed. */
export async function authorHere(store: Store, programme: string): Promise<Author> {
  const chosen = await chosenAuthor(store, programme);
  if (chosen !== undefined) return chosen;
  const pack = await packOf(store, programme);
  if (!pack) throw new Error('nothing is logged before it is known who is here');
  return { personId: pack.me.personId, name: pack.me.name };
}

/** With how far the clock is off: by it the books know whether its minutes mean anything. */
const onThisClock = (work: Work, offset: number | undefined): Work =>
  work.kind === 'entry' && offset !== undefined ? { ...work, entry: { ...work.entry, clockOffsetSeconds: offset } } : work;

export const STAYS = 'stays';

/** Asks the browser, once something is here, never to clear it away by itself; the answer is shown with the outbox. */
async function askToStay(store: Store): Promise<void> {
  if (typeof navigator === 'undefined' || (await store.get('settings', STAYS)) === true) return;
  const stays = await navigator.storage?.persist?.().catch(() => false);
  await store.put('settings', stays ?? false, STAYS);
}

import type { EntryProblem, Problem, WrittenEntry } from '@sprigline/contract';
import type { IDBPObjectStore, StoreNames } from 'idb';
import type { Decision, OutboxItem, SentItem, ToKeep } from './outbox-item.ts';
import type { Kept, Store } from './store.ts';

/** The disk has it before anybody is told so. */
const SURELY = { durability: 'strict' } as const;

/** How long what was sent stays here, to be undone and to show its flags. */
const SENT_KEPT_MS = 14 * 24 * 60 * 60 * 1000;

/**
 * Keeps what was logged. Resolves when the browser has it on disk, and not before; all of it or none.
 * What is kept under the same id and has not gone out is replaced in its place; a note that told a coordinator of it is called back.
 *
 * @returns ids that have gone out already: nothing was kept at all, they need corrections
 * @throws DOMException QuotaExceededError when the device is full
 */
export async function keep(store: Store, items: readonly ToKeep[], now: number): Promise<string[]> {
  const writing = store.transaction(['outbox', 'sent'], 'readwrite', SURELY);
  const outbox = writing.objectStore('outbox');
  const before = await Promise.all(items.map(({ id }) => outbox.index('id').get(id)));
  const sent = await Promise.all(items.map(({ id }) => writing.objectStore('sent').getKey(id)));
  const out = items.filter((_, nth) => hasGoneOut(before[nth]) || sent[nth] !== undefined).map(({ id }) => id);
  if (out.length === 0) {
    // The store gives the next number where there is none.
    await Promise.all([
      ...items.map((item, nth) => outbox.put({ ...item, keptAt: now, ...(before[nth] && { at: before[nth].at }) } as OutboxItem)),
      ...before.map((item) => callBack(outbox, item?.decided, now)), writing.done,
    ]);
  }
  await writing.done;
  return out;
}

/** The server may have it. What it refused, it has not. */
const hasGoneOut = (item: OutboxItem | undefined): boolean => item?.isOut === true && item.refusal === undefined;

/** Everything that is only on this device and is to be sent, in the order in which it was logged. */
export const unsent = async (store: Store): Promise<OutboxItem[]> => (await allHere(store)).filter(({ decided }) => !decided);

/** With what was refused and decided about, which stays readable. */
export const allHere = (store: Store): Promise<OutboxItem[]> => store.getAll('outbox');

/** Takes a note for a coordinator off this device; one that may be at the server is withdrawn there, where a volunteer may for a day. */
async function callBack<Stores extends ArrayLike<StoreNames<Kept>>>(outbox: IDBPObjectStore<Kept, Stores, 'outbox', 'readwrite'>, decided: Decision | undefined, now: number): Promise<void> {
  if (!decided?.withdrawal || decided.noteId === undefined) return;
  const note = await outbox.index('id').get(decided.noteId);
  if (note && !hasGoneOut(note)) await outbox.delete(note.at);
  else await outbox.put({ ...writtenNow(decided.withdrawal, now), keptAt: now } as OutboxItem);
}

const writtenNow = ({ work, ...item }: ToKeep, now: number): ToKeep =>
  ({ ...item, work: work.kind === 'entry' ? { ...work, entry: { ...work.entry, writtenAt: new Date(now).toISOString() } } : work });

/**
 * Takes back what has not gone out: the only thing that is ever deleted unseen by the server. What was put aside stays.
 *
 * @returns ids that have gone out already, and need a correction
 */
export async function takeBack(store: Store, ids: readonly string[], now = Date.now()): Promise<string[]> {
  const writing = store.transaction('outbox', 'readwrite', SURELY);
  const items = await Promise.all(ids.map((id) => writing.store.index('id').get(id)));
  await Promise.all(items.map((item) => item && !hasGoneOut(item) && (!item.decided || item.decided.withdrawal)
    ? Promise.all([writing.store.delete(item.at), callBack(writing.store, item.decided, now)]) : undefined));
  await writing.done;
  return ids.filter((_, nth) => items[nth] === undefined || hasGoneOut(items[nth]));
}

/** Says of items that they are about to go out, before they do, and answers them as they are at that moment. */
export async function letOut(store: Store, places: readonly number[]): Promise<OutboxItem[]> {
  const writing = store.transaction('outbox', 'readwrite', SURELY);
  const items = (await Promise.all(places.map((at) => writing.store.get(at)))).filter((item) => item !== undefined);
  await Promise.all(items.map((item) => (item.isOut ? undefined : writing.store.put({ ...item, isOut: true }))));
  await writing.done;
  return items;
}

export interface Heard {
  readonly item: OutboxItem;
  readonly status: Exclude<WrittenEntry['status'], 'refused'>;
  readonly flags: WrittenEntry['flags'];
}

/** What the server has goes from the outbox to what was sent, in one step. */
export async function markSent(store: Store, heard: readonly Heard[], now: number): Promise<void> {
  const writing = store.transaction(['outbox', 'sent'], 'readwrite', SURELY);
  const [outbox, sent] = [writing.objectStore('outbox'), writing.objectStore('sent')];
  await Promise.all(heard.map(async ({ item: { at, keptAt: _, refusal: __, isOut: ___, ...item }, status, flags }) => {
    const slim = item.work.kind === 'photo' ? { ...item, work: { ...item.work, bytes: new ArrayBuffer(0) } } : item;
    await Promise.all([outbox.delete(at), sent.put({ ...slim, status, flags, sentAt: now })]);
  }));
  await writing.done;
  await forgetOldSent(store, now);
}

async function forgetOldSent(store: Store, now: number): Promise<void> {
  const writing = store.transaction('sent', 'readwrite');
  for (let at = await writing.store.index('sentAt').openCursor(IDBKeyRange.upperBound(now - SENT_KEPT_MS)); at; at = await at.continue()) await at.delete();
  await writing.done;
}

/** What the server did not take stays here, with its reason, until a person decides. */
export async function markRefused(store: Store, refused: readonly { readonly at: number; readonly refusal: Problem | EntryProblem }[]): Promise<void> {
  const writing = store.transaction('outbox', 'readwrite', SURELY);
  await Promise.all(refused.map(async ({ at, refusal }) => {
    const item = await writing.store.get(at);
    if (item) await writing.store.put({ ...item, refusal });
  }));
  await writing.done;
}

/** What this device has sent lately, newest first. */
export async function sentLately(store: Store): Promise<SentItem[]> {
  return (await store.getAllFromIndex('sent', 'sentAt')).reverse();
}

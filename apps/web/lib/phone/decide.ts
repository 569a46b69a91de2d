import type { OutboxItem, ToKeep } from './outbox-item.ts';
import { allHere } from './outbox.ts';
import type { Store } from './store.ts';

/** What somebody decided about, the newest decision first. */
export async function decidedHere(store: Store): Promise<OutboxItem[]> {
  return (await allHere(store)).filter(({ decided }) => decided).toSorted((one, other) => (other.decided?.at ?? 0) - (one.decided?.at ?? 0));
}

/**
 * Keeps a note for a coordinator and marks what it tells of as given, both or neither: whatever the
 * network does, one of the two is on its way. Given twice, it is given once.
 *
 * @param at place in the outbox of what was refused
 * @param withdrawal of the note, should it have to be called back
 */
export async function give(store: Store, at: number, note: ToKeep, withdrawal: ToKeep, now: number): Promise<void> {
  const writing = store.transaction('outbox', 'readwrite', { durability: 'strict' });
  const item = await writing.store.get(at);
  if (item?.refusal && !item.decided) {
    await Promise.all([
      writing.store.put({ ...item, decided: { how: 'given', at: now, noteId: note.id, withdrawal } }),
      // The store gives the number.
      writing.store.put({ ...note, keptAt: now } as OutboxItem),
      writing.done,
    ]);
  }
  await writing.done;
}

/** It is sent no more, for a reason that stays with it. */
export async function putAside(store: Store, at: number, reason: string, now: number): Promise<void> {
  const writing = store.transaction('outbox', 'readwrite', { durability: 'strict' });
  const item = await writing.store.get(at);
  if (item?.refusal && !item.decided) await writing.store.put({ ...item, decided: { how: 'aside', at: now, reason } });
  await writing.done;
}

/**
 * Lets something be sent once more, also what was put aside. What was given to a coordinator is in their hands.
 * A note that was refused goes out about nothing, since what it is about may be what was not known.
 */
export async function sendOnceMore(store: Store, at: number): Promise<void> {
  const writing = store.transaction('outbox', 'readwrite', { durability: 'strict' });
  const item = await writing.store.get(at);
  if (item && item.decided?.how !== 'given') await writing.store.put({ ...withoutSubject(item), refusal: undefined, decided: undefined });
  await writing.done;
}

function withoutSubject(item: OutboxItem): OutboxItem {
  if (item.work.kind !== 'entry') return item;
  const { saying } = item.work.entry;
  if (saying.kind !== 'noted' || !saying.notBooked) return item;
  const { kind, text, notBooked } = saying;
  return { ...item, work: { ...item.work, entry: { ...item.work.entry, saying: { kind, text, notBooked } } } };
}

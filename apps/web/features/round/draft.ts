import { theStore, type Store } from '../../lib/phone/store.ts';
import type { Answer } from './answer.ts';
import type { KeptEntries } from '../../lib/phone/kept-entries.ts';
import type { PlaceAnswer } from './place-answer.ts';
import type { Look } from './stop.ts';

/** A round under way: where one is in it. What was told lies in the outbox as well, as soon as it was told. */
export interface Draft {
  readonly day: string;
  readonly seenBy: string;
  /** The workday that it is part of; nothing where none was chosen. */
  readonly workdayId?: string | undefined;
  readonly look: Look;
  /** How the place itself was found; nothing while nobody tapped. */
  readonly place?: PlaceAnswer | undefined;
  /** By batch. */
  readonly answers: Readonly<Record<string, Answer>>;
  /** What was kept of the answers, by batch, and of the place by its id. */
  readonly kept: Readonly<Record<string, KeptEntries>>;
}

export function readDraft(key: string): Draft | undefined {
  const kept = window.localStorage.getItem(key);
  if (kept === null) return undefined;
  try {
    // Written by keepDraft under a key that names its version.
    return JSON.parse(kept) as Draft;
  } catch {
    return undefined;
  }
}

/** Keeps it where it is read at once, and beside the outbox, where it outlives a phone that dies. */
export function keepDraft(key: string, draft: Draft): void {
  const kept = Object.keys(draft.answers).length === 0 && !draft.place ? null : draft;
  void theStore().then((store) => keepSurely(store, key, kept)).catch(() => undefined);
  write(window.localStorage, key, kept);
}

/** @param draft null: the round is over */
export async function keepSurely(store: Store, key: string, draft: Draft | null): Promise<void> {
  const writing = store.transaction('settings', 'readwrite', { durability: 'strict' });
  await Promise.all([writing.store.put(draft, key), writing.done]);
}

/**
 * A browser writes its local storage to the disk minutes later. When the phone dies it has forgotten what was told, and
 * the outbox has not: a walk that asked for it once more would have it told twice. So what lies beside the outbox holds.
 *
 * @returns batches whose answers had been forgotten: what was being tapped in for them is older than what was told
 */
export async function bringBackDraft(store: Store, storage: Pick<Storage, 'getItem' | 'setItem' | 'removeItem'>, key: string): Promise<string[]> {
  const kept = (await store.get('settings', key)) as Draft | null | undefined;
  // Of an earlier version, or as it was left.
  if (kept === undefined || storage.getItem(key) === (kept && JSON.stringify(kept))) return [];
  write(storage, key, kept);
  return Object.keys(kept?.answers ?? {});
}

function write(storage: Pick<Storage, 'setItem' | 'removeItem'>, key: string, draft: Draft | null): void {
  try {
    if (draft) storage.setItem(key, JSON.stringify(draft));
    else storage.removeItem(key);
  } catch {
    // Full, or switched off: it is on the screen, and beside the outbox.
  }
}

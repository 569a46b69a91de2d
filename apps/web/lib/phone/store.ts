import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import type { OutboxItem, SentItem } from './outbox-item.ts';
import type { KeptPack, KeptWalk } from './pack-shapes.ts';

/** All that this browser keeps of Sprigline for when there is no signal. */
export interface Kept extends DBSchema {
  outbox: { key: number; value: OutboxItem; indexes: { id: string } };
  sent: { key: string; value: SentItem; indexes: { sentAt: number } };
  /** By programme. */
  packs: { key: string; value: KeptPack };
  /** By programme and walk. */
  walks: { key: string; value: KeptWalk };
  settings: { key: string; value: unknown };
}

export type Store = IDBPDatabase<Kept>;

const VERSION = 1;

/** @param name another one in tests */
export function openStore(name = 'sprigline'): Promise<Store> {
  return openDB<Kept>(name, VERSION, {
    upgrade(database) {
      database.createObjectStore('outbox', { keyPath: 'at', autoIncrement: true }).createIndex('id', 'id', { unique: true });
      database.createObjectStore('sent', { keyPath: 'id' }).createIndex('sentAt', 'sentAt');
      database.createObjectStore('packs');
      database.createObjectStore('walks');
      database.createObjectStore('settings');
    },
    // Another tab brings a newer version: it must not wait for this one.
    blocking: (_current, _blocked, event) => (event.target as IDBDatabase).close(),
    terminated: () => (kept = undefined),
  });
}

let kept: Promise<Store> | undefined;

/** The store of this browser, opened once, and again when the browser has closed it. */
export function theStore(): Promise<Store> {
  kept ??= openStore().catch((error: unknown) => {
    kept = undefined;
    throw error;
  });
  return kept;
}

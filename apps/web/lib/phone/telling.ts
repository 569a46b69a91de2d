import type { TellDevice } from '@sprigline/contract';
import { newId } from '../new-id.ts';
import { type Ask, apiPath } from './ask.ts';
import { unsent } from './outbox.ts';
import type { Store } from './store.ts';

const [ID, NAME] = ['device-id', 'device-name'];

/** Under which this browser is known, made once. */
export async function deviceId(store: Store): Promise<string> {
  const writing = store.transaction('settings', 'readwrite');
  const known = await writing.store.get(ID);
  const id = typeof known === 'string' ? known : newId();
  if (known === undefined) await writing.store.put(id, ID);
  await writing.done;
  return id;
}

/** What people call it, such as "Bench tablet"; nothing while nobody gave it a name. */
export async function deviceName(store: Store): Promise<string | undefined> {
  const name = await store.get('settings', NAME);
  return typeof name === 'string' ? name : undefined;
}

/** @param name blank: none any more */
export async function nameDevice(store: Store, name: string): Promise<void> {
  const said = name.trim().slice(0, 200);
  if (said === '') await store.delete('settings', NAME);
  else await store.put('settings', said, NAME);
}

/** Programmes in which this browser logs: what is packed, and what waits to be sent. */
export async function programmesHere(store: Store): Promise<string[]> {
  const [packs, items] = await Promise.all([store.getAllKeys('packs'), unsent(store)]);
  return [...new Set([...packs, ...items.map(({ programme }) => programme)])];
}

/** Tells programmes how many entries are only here. No entry waits for it, and what goes wrong does no harm: it is told again at the next sending. */
export async function tellOfDevice(store: Store, ask: Ask, programmes: readonly string[], { hasPacked = false }: { hasPacked?: boolean } = {}): Promise<void> {
  try {
    const [id, name, items, app] = await Promise.all([deviceId(store), deviceName(store), unsent(store), buildHere()]);
    for (const programme of programmes) {
      const waiting = items.filter((item) => item.programme === programme);
      const told: TellDevice = { name: name ?? null, unsent: waiting.length, oldestUnsentOn: waiting[0] ? dayOf(Math.min(...waiting.map(({ keptAt }) => keptAt))) : null, app: app ?? null, hasPacked };
      await tell(ask, apiPath(programme, 'devices', id), told);
    }
  } catch {
    // No signal, or a browser without storage.
  }
}

/** What is as it was told lately need not be told again. Milliseconds. */
const LATELY_MS = 10 * 60 * 1000;

const lastTold = new Map<string, { readonly words: string; readonly at: number }>();

async function tell(ask: Ask, path: string, told: TellDevice): Promise<void> {
  const [words, before] = [JSON.stringify(told), lastTold.get(path)];
  if (before?.words === words && Date.now() - before.at < LATELY_MS) return;
  const { status } = await ask(path, { method: 'PUT', json: told, patienceMs: 10_000 });
  if (status < 300) lastTold.set(path, { words, at: Date.now() });
}

/** The calendar day by this device's own clock and zone. */
function dayOf(moment: number): string {
  const day = new Date(moment);
  return `${day.getFullYear()}-${String(day.getMonth() + 1).padStart(2, '0')}-${String(day.getDate()).padStart(2, '0')}`;
}

/** The build that opens without a signal, by the name of its cache. */
async function buildHere(): Promise<string | undefined> {
  if (typeof caches === 'undefined') return undefined;
  return (await caches.keys()).find((name) => name.startsWith('sprigline-'))?.slice('sprigline-'.length);
}

import type { Decision, OutboxItem, ToKeep, Work } from './outbox-item.ts';
import { allHere, keep } from './outbox.ts';
import type { Store } from './store.ts';

const WHAT = 'sprigline/only-on-this-device';
const VERSION = 1;

/**
 * What is only on this device, as a file that any other one can take up and send. What was decided about is in it, to be read.
 *
 * @param id only that one
 */
export async function rescueFile(store: Store, now: Date, id?: string): Promise<{ readonly name: string; readonly text: string }> {
  const items = (await allHere(store)).filter((item) => id === undefined || item.id === id).map(({ at: _, isOut: __, ...item }) => ({ ...item, work: written(item.work) }));
  return { name: `sprigline-${now.toISOString().slice(0, 16).replaceAll(':', '-')}.json`, text: JSON.stringify({ what: WHAT, version: VERSION, madeAt: now.toISOString(), items }, undefined, 1) };
}

export type NotTakenUp = 'not-a-file-of-ours' | 'newer-than-this' | 'broken';

/**
 * Takes up what another device could not send. Ids stay as they are, so what arrives twice is written once.
 *
 * @returns how many were taken up to be sent; what is here already, or was sent from here, is left as it is
 */
export async function takeUp(store: Store, text: string, now: number): Promise<number | NotTakenUp> {
  const file = fileIn(text);
  if (typeof file === 'string') return file;
  const here = new Set([...(await allHere(store)).map(({ id }) => id), ...(await store.getAllKeys('sent'))]);
  const fresh = file.filter(({ id }) => !here.has(id));
  await keep(store, fresh, now);
  return fresh.filter(({ decided }) => !decided).length;
}

type InFile = ToKeep & Pick<OutboxItem, 'decided' | 'refusal'>;

function fileIn(text: string): InFile[] | NotTakenUp {
  let file: { what?: unknown; version?: unknown; items?: unknown };
  try {
    file = Object(JSON.parse(text)) as typeof file;
  } catch {
    return 'not-a-file-of-ours';
  }
  if (file.what !== WHAT) return 'not-a-file-of-ours';
  if (file.version !== VERSION) return 'newer-than-this';
  if (!Array.isArray(file.items) || !file.items.every(isItem)) return 'broken';
  return file.items.map(({ id, programme, author, about, was, work, decided, refusal }) => ({
    id, programme, author, about, ...(Array.isArray(was) && was.every(isText) && { was }), work: read(work as WrittenWork), ...(isDecision(decided) && { decided, refusal }),
  }));
}

/** What another machine refused may be taken by this one's server; only what a person decided stays decided. */
const isDecision = (one: unknown): one is Decision => ['given', 'aside'].includes(String(Object(one).how)) && typeof (one as Decision).at === 'number';

const isText = (one: unknown): one is string => typeof one === 'string' && one !== '';

/** Enough to send it; whether it makes sense is for the server to say. */
function isItem(item: unknown): item is Omit<OutboxItem, 'work'> & { work: unknown } {
  const { id, programme, author, about, work } = Object(item) as Partial<Record<keyof ToKeep, unknown>>;
  const { kind, path, entry, bytes } = Object(work) as Record<string, unknown>;
  const isSendable = kind === 'entry' ? typeof entry === 'object' && entry !== null : (kind === 'record' || (kind === 'photo' && isText(bytes))) && isText(path) && path.startsWith('/api/v1/programmes/');
  return [id, programme, about, (Object(author) as { personId?: unknown }).personId].every(isText) && isSendable;
}

type WrittenWork = Exclude<Work, { kind: 'photo' }> | { readonly kind: 'photo'; readonly path: string; readonly type: string; readonly bytes: string };

/** Bytes as base64, since JSON knows none. */
function written(work: Work): WrittenWork {
  if (work.kind !== 'photo') return work;
  let signs = '';
  for (const byte of new Uint8Array(work.bytes)) signs += String.fromCharCode(byte);
  return { ...work, bytes: btoa(signs) };
}

function read(work: WrittenWork): Work {
  if (work.kind !== 'photo') return work;
  return { ...work, bytes: Uint8Array.from(atob(work.bytes), (sign) => sign.charCodeAt(0)).buffer };
}

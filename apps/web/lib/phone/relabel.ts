import type { EntryToSend } from '../entry-to-send.ts';
import type { OutboxItem, Work } from './outbox-item.ts';
import type { Store } from './store.ts';

/** Refused since the label is on something else, or is no code that was ever printed. */
const LABEL_REFUSED = /\/(?:batch\/label-taken|label\/mistyped)$/;
const NAME_TAKEN = /\/record\/name-taken$/;

/** What gives a label: an entry, a label put on something, or a donor tree that is written down. Nothing where the label is no reason for the refusal. */
export function refusedLabel({ work, refusal }: Pick<OutboxItem, 'work' | 'refusal'>): { readonly label: string; readonly of: 'plants' | 'label' | 'donorTree' } | undefined {
  const type = refusal?.type ?? '';
  if (work.kind === 'entry') return LABEL_REFUSED.test(type) && 'label' in work.entry.saying && work.entry.saying.label !== undefined ? { label: work.entry.saying.label, of: 'plants' } : undefined;
  if (work.kind !== 'record') return undefined;
  const { code, label } = work.body as { code?: string; label?: string };
  if (work.path.endsWith('/labels') && LABEL_REFUSED.test(type) && code !== undefined) return { label: code, of: 'label' };
  if (work.path.endsWith('/donor-trees') && NAME_TAKEN.test(type) && label !== undefined) return { label, of: 'donorTree' };
  return undefined;
}

/** The same under another label; of plants also under none. Its id stays: of what was refused the server has nothing. */
export function withLabel(work: Work, label: string | undefined): Work {
  if (work.kind === 'record') {
    const body = work.body as object;
    return { ...work, body: 'code' in body ? { ...body, code: label } : { ...body, label } };
  }
  if (work.kind !== 'entry') return work;
  const { label: _, ...saying } = work.entry.saying as EntryToSend['saying'] & { label?: string };
  return { ...work, entry: { ...work.entry, saying: (label === undefined ? saying : { ...saying, label }) as EntryToSend['saying'] } };
}

/** What was logged after it and names it, or what it began, or anything of that again: it could not be taken without it. */
export function behind(item: OutboxItem, all: readonly OutboxItem[]): OutboxItem[] {
  const ids = idsMade(item);
  const found: OutboxItem[] = [];
  for (const other of all.filter(({ at, decided }) => at > item.at && !decided).toSorted((one, two) => one.at - two.at)) {
    const said = saidIn(other.work);
    if (![...ids].some((id) => said.includes(id))) continue;
    found.push(other);
    for (const id of idsMade(other)) ids.add(id);
  }
  return found;
}

const saidIn = (work: Work): string => (work.kind === 'photo' ? work.path : JSON.stringify(work));

/** Of itself, and of the batch or sticking that it opens. */
function idsMade({ id, work }: OutboxItem): Set<string> {
  if (work.kind !== 'entry') return new Set([id]);
  const { saying } = work.entry;
  const opens = saying.kind === 'stuck' || saying.kind === 'received' ? [saying.batchId, saying.stickingId] : 'toBatchId' in saying && saying.toBatchId !== undefined ? [saying.toBatchId] : [];
  return new Set([id, ...opens]);
}

/**
 * Gives what was refused another label, and lets it be sent once more with all that waits behind it. In one step: all of it or nothing.
 *
 * @param label nothing: plants without one
 */
export async function relabel(store: Store, at: number, label: string | undefined): Promise<void> {
  const writing = store.transaction('outbox', 'readwrite', { durability: 'strict' });
  const item = await writing.store.get(at);
  const was = item && refusedLabel(item)?.label;
  if (item && was !== undefined) {
    const waiting = behind(item, await writing.store.getAll());
    // What is about a tree is called by its label; of plants the batch that they came from is.
    const about = (one: OutboxItem): string => (one.about === was && label !== undefined ? label : one.about);
    await writing.store.put({ ...item, about: about(item), was: [...(item.was ?? []), was], work: withLabel(item.work, label), refusal: undefined, isOut: undefined });
    await Promise.all(waiting.map((one) => writing.store.put({ ...one, about: about(one), refusal: undefined })));
  }
  await writing.done;
}

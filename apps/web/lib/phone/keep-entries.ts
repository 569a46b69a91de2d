import { keepHere, type Logged, takeBackHere } from './device.ts';
import type { EntryToSend } from '../entry-to-send.ts';
import { changed, type KeptEntries } from './kept-entries.ts';

interface Why {
  readonly programme: string;
  /** Why something told before is told otherwise. */
  readonly reason: string;
}

/** What is told of one thing. */
export interface Part {
  /** What the entries are about, in the words of its label. */
  readonly about: string;
  readonly now: readonly EntryToSend[];
  readonly before: KeptEntries | undefined;
}

/**
 * Keeps on this device what is told now of several things, instead of what was told before: all of it, or none.
 * Resolves once it is on disk, with what was kept of each.
 *
 * @param behind what goes with it, such as photos: kept in the same step, and sent after it
 */
export async function keepTogether({ programme, reason }: Why, parts: readonly Part[], behind: readonly Logged[] = []): Promise<KeptEntries[]> {
  const gone = parts.flatMap(({ now, before }) => (before?.ids ?? []).filter((id) => now.every((entry) => entry.id !== id) && before?.entries.some((entry) => entry.id === id)));
  const out = new Set([...(await takeBackHere(gone)), ...parts.flatMap(({ before }) => Object.keys(before?.versions ?? {}))]);
  // Something may go out between two looks; each time at least one more is known to have.
  for (;;) {
    const changes = parts.map(({ about, now, before }) => ({ about, ...changed(before, now, (id) => out.has(id), reason) }));
    const entries = changes.flatMap(({ about, toKeep }) => toKeep.map((entry): Logged => ({ id: entry.id, about, work: { kind: 'entry', entry } })));
    const wentOut = await keepHere(programme, [...entries, ...behind.filter(({ id }) => !out.has(id))]);
    if (wentOut.length === 0) return changes.map(({ kept }) => kept);
    for (const id of wentOut) out.add(id);
  }
}

/** Keeps on this device what is told now of one thing, instead of what was told before. */
export async function keepEntries({ about, ...why }: Why & Pick<Part, 'about'>, now: readonly EntryToSend[], before: KeptEntries | undefined, behind: readonly Logged[] = []): Promise<KeptEntries> {
  const [kept] = await keepTogether(why, [{ about, now, before }], behind);
  // One for each part.
  return kept as KeptEntries;
}

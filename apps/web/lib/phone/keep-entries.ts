import { keepHere, takeBackHere } from './device.ts';
import type { EntryToSend } from '../entry-to-send.ts';
import { changed, type KeptEntries } from './kept-entries.ts';

interface About {
  readonly programme: string;
  /** What the entries are about, in the words of its label. */
  readonly about: string;
  /** Why something told before is told otherwise. */
  readonly reason: string;
}

/**
 * Keeps on this device what is told now, instead of what was told before.
 * Resolves once it is on disk.
 */
export async function keepEntries(about: About, now: readonly EntryToSend[], before: KeptEntries | undefined): Promise<KeptEntries> {
  const gone = (before?.ids ?? []).filter((id) => now.every((entry) => entry.id !== id) && before?.entries.some((entry) => entry.id === id));
  const out = new Set([...(await takeBackHere(gone)), ...Object.keys(before?.versions ?? {})]);
  // Something may go out between two looks; each time at least one more is known to have.
  for (;;) {
    const change = changed(before, now, (id) => out.has(id), about.reason);
    const wentOut = await keepHere(about.programme, change.toKeep.map((entry) => ({ id: entry.id, about: about.about, work: { kind: 'entry', entry } })));
    if (wentOut.length === 0) return change.kept;
    for (const id of wentOut) out.add(id);
  }
}

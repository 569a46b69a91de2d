import type { EntryToSend } from '../entry-to-send.ts';
import { newId } from '../new-id.ts';

/** What was kept of one answer: as it was told last, and what it may be called back by. */
export interface KeptEntries {
  readonly entries: readonly EntryToSend[];
  /** Of an entry that was corrected: the correction that the next one has to name. */
  readonly versions: Readonly<Record<string, string>>;
  /** Every entry that was ever made for it, corrections too. */
  readonly ids: readonly string[];
}

export interface Change {
  /** To be kept: entries that are new or have not gone out, and corrections of those that have. */
  readonly toKeep: readonly EntryToSend[];
  readonly kept: KeptEntries;
}

/**
 * Makes the books say what is told now instead of what was told before.
 *
 * @param isOut whether an entry may be at the server already: it is corrected, and never told anew under its id
 * @param reason why, for whoever reads the corrections later
 */
export function changed(before: KeptEntries | undefined, now: readonly EntryToSend[], isOut: (id: string) => boolean, reason: string): Change {
  const versions: Record<string, string> = { ...before?.versions };
  const toKeep = now.flatMap((entry) => {
    if (!isOut(entry.id)) return [entry];
    const was = before?.entries.find(({ id }) => id === entry.id);
    if (was && saysTheSame(was, entry)) return [];
    const correction = correctionOf(entry, { kind: 'replaced', entryId: entry.id, sawVersion: versions[entry.id] ?? entry.id, reason, instead: insteadOf(entry) });
    versions[entry.id] = correction.id;
    return [correction];
  });
  const withdrawals = (before?.entries ?? []).filter(({ id }) => isOut(id) && now.every((entry) => entry.id !== id)).map((entry) => {
    const withdrawal = correctionOf(entry, { kind: 'withdrawn', entryId: entry.id, sawVersion: versions[entry.id] ?? entry.id, reason });
    versions[entry.id] = withdrawal.id;
    return withdrawal;
  });
  const all = [...toKeep, ...withdrawals];
  return { toKeep: all, kept: { entries: now, versions, ids: [...new Set([...(before?.ids ?? []), ...all.map(({ id }) => id)])] } };
}

const saysTheSame = (one: EntryToSend, other: EntryToSend): boolean => JSON.stringify(insteadOf(one)) === JSON.stringify(insteadOf(other));

// What is corrected was no correction itself.
const insteadOf = ({ observedOn, minute, saying }: EntryToSend) =>
  ({ observedOn, ...(minute === undefined ? {} : { minute }), saying: saying as Extract<EntryToSend['saying'], { kind: 'counted' }> });

function correctionOf({ observedOn, workdayId }: EntryToSend, saying: EntryToSend['saying']): EntryToSend {
  return { id: newId(), observedOn, ...(workdayId === undefined ? {} : { workdayId }), writtenAt: new Date().toISOString(), saying };
}

import type { HistoryItem } from '@sprigline/contract';
import { contentOrder, effectiveEntries } from '@sprigline/domain';
import { type HistoryRows, latestVersionOf, mayMend, rootIdOf, type StoredEntry } from '../entry/history.queries.ts';
import type { Caller } from '../http/caller.ts';

/** The history of a batch in content order: each entry with its corrections, what it booked, and what is doubtful about it. */
export function historyItems(rows: HistoryRows, caller: Caller): HistoryItem[] {
  const { effective, rivals } = effectiveEntries(rows.entries.filter(({ id }) => !rows.waiting.has(id)));
  const standing = new Map(effective.map((entry) => [entry.id, entry]));
  const idle = new Set([...rows.waiting, ...rivals.map(({ entryId }) => entryId)]);
  return rows.entries
    .filter((entry) => rootIdOf(entry) === entry.id)
    .sort((a, b) => contentOrder(standing.get(a.id) ?? a, standing.get(b.id) ?? b))
    .map((entry) => item(entry, { rows, caller, now: standing.get(entry.id), corrections: rows.entries.filter((other) => other !== entry && rootIdOf(other) === entry.id), idle }));
}

interface Around {
  readonly rows: HistoryRows;
  readonly caller: Caller;
  readonly now: ReturnType<typeof effectiveEntries>['effective'][number] | undefined;
  readonly corrections: readonly StoredEntry[];
  /** Corrections without effect: rivals, and those that wait. */
  readonly idle: ReadonlySet<string>;
}

function item(entry: StoredEntry, { rows, caller, now, corrections, idle }: Around): HistoryItem {
  const ids = new Set([entry.id, ...corrections.map(({ id }) => id)]);
  const inOrder = corrections.toSorted(contentOrder);
  return {
    ...told(entry, rows),
    kind: entry.said.kind,
    observedOn: entry.observedOn,
    minute: entry.minute ?? null,
    note: entry.note ?? null,
    seenBy: nameOf(entry.seenBy, rows),
    door: entry.door,
    now: now ? { observedOn: now.observedOn, minute: now.minute ?? null, said: { ...now.saying } } : null,
    latestVersionId: latestVersionOf(entry, inOrder.filter(({ id }) => !idle.has(id))),
    corrections: inOrder.flatMap((correction) => {
      const { said } = correction;
      if (said.kind !== 'withdrawn' && said.kind !== 'replaced') return [];
      return [{ ...told(correction, rows), kind: said.kind, reason: said.reason, isEffective: !idle.has(correction.id) }];
    }),
    movements: rows.movements.filter(({ entryId }) => entryId === entry.id),
    flags: rows.flags
      .filter(({ entryId }) => ids.has(entryId))
      .map(({ code, n, decision }) => ({ code: code as HistoryItem['flags'][number]['code'], n, decision })),
    mayMend: mayMend(entry, caller, rows.at),
  };
}

const told = (entry: StoredEntry, rows: HistoryRows) => ({
  id: entry.id,
  said: entry.said,
  writtenBy: nameOf(entry.writtenBy, rows),
  writtenAt: entry.writtenAt,
  receivedAt: entry.receivedAt,
});

const nameOf = (personId: string | undefined, { names }: HistoryRows): string | null => (personId && names.get(personId)) ?? null;

import { type EntryProblem, type WrittenEntry } from '@sprigline/contract';
import { DomainError } from '@sprigline/domain';
import { toProblem } from '../http/problem.ts';
import { DeskRefusal } from './judge/desk.ts';
import type { Scribe } from './judge/scribe.ts';

/** What became of one entry, as the API answers it. */
export type WrittenItem = WrittenEntry;

/** In the order of the request, each with the flags that stand at it now. */
export function answersOf({ outcomes, keeper }: Scribe): WrittenItem[] {
  const flags = new Map<string, WrittenEntry['flags']>();
  for (const { batch, after } of keeper.changed()) {
    for (const flag of after.flags) flags.set(flag.entryId, [...(flags.get(flag.entryId) ?? []), { ...flag, batchId: batch.id }]);
  }
  return outcomes.map(({ id, status, refusal }) => ({
    id,
    status,
    flags: status === 'refused' ? [] : (flags.get(id) ?? []),
    ...(refusal && { problem: problemOf(refusal) }),
  }));
}

const problemOf = (refusal: DomainError): EntryProblem => ({
  ...toProblem(refusal),
  ...(refusal instanceof DeskRefusal && { discrepancies: [...refusal.discrepancies] }),
});

const KEPT_OUT = new DomainError('entry/one-was-refused', 'nothing was written: mend the entry that was refused, then send all of them again');

/** What is answered when one entry of an act was refused: those written before stay, the others were kept out. */
export const nothingWritten = (items: readonly WrittenItem[]): WrittenItem[] =>
  items.map((item) => (item.status === 'written' || item.status === 'waiting' ? { id: item.id, status: 'refused', flags: [], problem: problemOf(KEPT_OUT) } : item));

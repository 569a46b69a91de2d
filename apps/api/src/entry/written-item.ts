import { type EntryProblem, type WrittenEntry } from '@sprigline/contract';
import type { DomainError } from '@sprigline/domain';
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

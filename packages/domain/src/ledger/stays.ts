import type { BatchIdentity, Stay } from './books.ts';
import type { Fact } from './fact.ts';

/** Where the whole batch stood, from its opening and from each time it was carried elsewhere. */
export function staysOf(batch: BatchIdentity, facts: readonly Fact[]): Stay[] {
  const stays: Stay[] = [];
  for (const fact of facts) {
    const placeId = placeAfter(batch, fact);
    if (placeId !== undefined) stays.push({ placeId, from: fact.day, entryId: fact.entryId });
  }
  return stays;
}

function placeAfter(batch: BatchIdentity, fact: Fact): string | undefined {
  if (fact.act === 'carried') return fact.placeId;
  if (fact.act === 'arrived' && fact.entryId === batch.openingEntryId) return batch.openingPlaceId;
  return undefined;
}

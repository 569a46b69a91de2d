import type { BatchInList } from '@sprigline/contract';

/** What a partner may write of a batch: a check of the trees at their site, a count of what is in their hands. */
export function partnersAct({ relations, balance }: Pick<BatchInList, 'relations' | 'balance'>): 'check' | 'count' | undefined {
  if (balance === 0) return undefined;
  if (relations.includes('site')) return 'check';
  return relations.includes('hands') ? 'count' : undefined;
}

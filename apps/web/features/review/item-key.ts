import type { ReviewItem } from '@sprigline/contract';

/** Names one flag in an address: entry, batch and code, since one entry may be flagged in several batches. */
export const itemKey = ({ entryId, batch, code }: Pick<ReviewItem, 'entryId' | 'batch' | 'code'>): string => [entryId, batch?.id ?? '', code].join('.');

/** The value of its tick: the id of the decision, made with the page, before the name of the flag. */
export const tickOf = (decisionId: string, item: Pick<ReviewItem, 'entryId' | 'batch' | 'code'>): string => `${decisionId}.${itemKey(item)}`;

export interface Doubt {
  readonly id: string;
  readonly entryId: string;
  readonly batchId?: string;
  readonly code: string;
}

/** What a tick names; nothing for anything that is no tick of ours. */
export function doubtIn(tick: string): Doubt[] {
  const [id, entryId, batchId, code] = tick.split('.');
  if (!id || !entryId || !code) return [];
  return [{ id, entryId, code, ...(batchId ? { batchId } : {}) }];
}

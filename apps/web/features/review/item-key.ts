import type { ReviewItem } from '@sprigline/contract';

/** Names one flag in an address: entry, batch and code, since one entry may be flagged in several batches. */
export const itemKey = ({ entryId, batch, code }: Pick<ReviewItem, 'entryId' | 'batch' | 'code'>): string => [entryId, batch?.id ?? '', code].join('.');

import type { ReviewItem } from '@sprigline/contract';

type Named = Pick<ReviewItem, 'entryId' | 'batch' | 'code'>;

/** Names one flag in an address: entry, batch and code, since one entry may be flagged in several batches. */
export const itemKey = ({ entryId, batch, code }: Named): string => [entryId, batch?.id ?? '', code].join('.');

const TICK = 'doubts/';

/** The name of its tick in a form; the tick's value is the id that the decision has. */
export const tickName = (item: Named): string => TICK + itemKey(item);

export interface Doubt {
  readonly id: string;
  readonly entryId: string;
  readonly batchId?: string;
  readonly code: string;
}

/** The doubt that a tick names; nothing for anything in the form that is no tick of ours. */
export function doubtOf(name: string, id: FormDataEntryValue): Doubt | undefined {
  if (!name.startsWith(TICK) || typeof id !== 'string') return undefined;
  const [entryId, batchId, code] = name.slice(TICK.length).split('.');
  if (!id || !entryId || !code) return undefined;
  return { id, entryId, code, ...(batchId ? { batchId } : {}) };
}

import type { Stage } from '@sprigline/contract';

/** One batch that was scanned. The ids of what will be written are made now, so that sending twice writes once. */
export interface ScannedBatch {
  /** Its place in the form. Never used again, so that what was wrong with a line stays beside that line. */
  readonly at: number;
  readonly batchId: string;
  readonly label: string;
  readonly stage: Stage;
  /** Donor tree or species, and where it stands in the books. */
  readonly what: string;
  readonly place: string | null;
  readonly balance: number;
  readonly isHeld: boolean;
  readonly entryId: string;
  readonly toBatchId: string;
}

/** What one person has scanned on one device and not written yet. */
export interface Scanned {
  /** Of this list. What was written names it, so that nothing else is cleared away. */
  readonly id: string;
  readonly next: number;
  readonly batches: readonly ScannedBatch[];
  /** Taken off last, and may be put back. */
  readonly takenOff?: ScannedBatch | undefined;
  readonly placeId: string;
}

/** So many are one request. */
export const MOST_SCANNED = 500;

export const nothingScanned = (id: string): Scanned => ({ id, next: 0, batches: [], placeId: '' });

export const isScanned = ({ batches }: Scanned, batchId: string): boolean => batches.some((one) => one.batchId === batchId);

/** Adds a batch at the head of the list; one that is there stays as it is. */
export function withBatch(list: Scanned, batch: Omit<ScannedBatch, 'at'>): Scanned {
  if (isScanned(list, batch.batchId) || list.batches.length >= MOST_SCANNED) return list;
  return { ...list, next: list.next + 1, batches: [{ ...batch, at: list.next }, ...list.batches], takenOff: undefined };
}

export function withoutBatch(list: Scanned, batchId: string): Scanned {
  const takenOff = list.batches.find((one) => one.batchId === batchId);
  return takenOff ? { ...list, batches: list.batches.filter((one) => one !== takenOff), takenOff } : list;
}

/** Puts back what was taken off last, where it stood. */
export function putBack(list: Scanned): Scanned {
  const { takenOff } = list;
  if (!takenOff || isScanned(list, takenOff.batchId)) return { ...list, takenOff: undefined };
  return { ...list, batches: [...list.batches, takenOff].sort((a, b) => b.at - a.at), takenOff: undefined };
}

/** What this device keeps, if it is a list of ours. */
export function keptScanned(text: string | null): Scanned | undefined {
  try {
    const kept = JSON.parse(text ?? '') as Partial<Scanned> | null;
    const isOurs = typeof kept?.id === 'string' && typeof kept.next === 'number' && typeof kept.placeId === 'string' && Array.isArray(kept.batches);
    return isOurs ? (kept as Scanned) : undefined;
  } catch {
    return undefined;
  }
}

import type { Saying } from './entry.ts';

/** Ids of all batches that what was said touches, each once; of a replacement, those of what it puts instead. */
export function touchedBatches(saying: Saying): string[] {
  return [...new Set(namedBatches(saying))];
}

function namedBatches(saying: Saying): string[] {
  switch (saying.kind) {
    case 'withdrawn':
      return [];
    case 'replaced':
      return namedBatches(saying.instead.saying);
    case 'mixed':
      return [...saying.parts.map(({ batchId }) => batchId), saying.toBatchId];
    case 'held':
    case 'released':
      return [...named(saying.batchId), ...(saying.batchIds ?? [])];
    case 'lifted':
    case 'potted':
    case 'planted':
    case 'moved':
    case 'restuck':
    case 'givenOut':
    case 'identified':
      return [saying.batchId, ...named(saying.toBatchId)];
    default:
      return named(saying.batchId);
  }
}

const named = (batchId: string | undefined): string[] => (batchId === undefined ? [] : [batchId]);

/**
 * Whether a batch can begin with what was said: it brings plants into that batch.
 * Which of several did begin it is part of the batch's identity (`openingEntryId`).
 */
export function isOpening(saying: Saying, batchId: string): boolean {
  switch (saying.kind) {
    case 'stuck':
    case 'received':
      return saying.batchId === batchId;
    case 'lifted':
    case 'potted':
    case 'planted':
    case 'moved':
    case 'restuck':
    case 'givenOut':
    case 'mixed':
    case 'identified':
      return saying.toBatchId === batchId;
    default:
      return false;
  }
}

import type { Entry, Saying } from './entry.ts';

/** Days on which somebody looked, at all of a batch or at a sample. They move nothing in the books; what is due asks for them. */
export interface Looks {
  /** The last one by a tug or with roots in sight. */
  readonly strongOn?: string | undefined;
  /** The last one at a sample. */
  readonly sampledOn?: string | undefined;
  /** The last one that told no count: looked over with nothing to report, or some found dead. A round is walked by it, nothing else. */
  readonly lookedOverOn?: string | undefined;
}

/**
 * When plants of one batch were last looked at strongly, when as a sample, and when only looked over.
 *
 * @param standing effective entries that touch the batch, in any order; those that are no looks do no harm
 */
export function looksOf(batchId: string, standing: readonly Entry[]): Looks {
  let [strongOn, sampledOn, lookedOverOn]: (string | undefined)[] = [];
  for (const { observedOn, saying } of standing) {
    if (isLookedOver(batchId, saying)) lookedOverOn = later(lookedOverOn, observedOn);
    if (saying.kind !== 'counted' || saying.batchId !== batchId) continue;
    if (saying.look !== 'look') strongOn = later(strongOn, observedOn);
    if (saying.sampleOf !== undefined) sampledOn = later(sampledOn, observedOn);
  }
  return { strongOn, sampledOn, lookedOverOn };
}

/** Who finds dead ones has stood before the others, too. */
const isLookedOver = (batchId: string, saying: Saying): boolean =>
  (saying.kind === 'died' || (saying.kind === 'noted' && saying.lookedOver === true)) && saying.batchId === batchId;

const later = (known: string | undefined, day: string): string => (known === undefined || day > known ? day : known);

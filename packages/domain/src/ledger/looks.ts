import type { Entry } from './entry.ts';

/** Days on which somebody looked, at all of a batch or at a sample. They move nothing in the books; what is due asks for them. */
export interface Looks {
  /** The last one by a tug or with roots in sight. */
  readonly strongOn?: string | undefined;
  /** The last one at a sample. */
  readonly sampledOn?: string | undefined;
}

/**
 * When plants of one batch were last looked at strongly, and when as a sample.
 *
 * @param standing effective entries that touch the batch, in any order; those that are no counts do no harm
 */
export function looksOf(batchId: string, standing: readonly Entry[]): Looks {
  const counts = standing.flatMap(({ observedOn, saying }) => (saying.kind === 'counted' && saying.batchId === batchId ? [{ ...saying, day: observedOn }] : []));
  return {
    strongOn: lastDay(counts.filter(({ look }) => look !== 'look')),
    sampledOn: lastDay(counts.filter(({ sampleOf }) => sampleOf !== undefined)),
  };
}

const lastDay = (counts: readonly { readonly day: string }[]): string | undefined => counts.map(({ day }) => day).sort().at(-1);

import 'server-only';
import { Batch, Label } from '@sprigline/contract';
import { onlyLiving } from './only-living.ts';
import { readIfAllowed } from './read-if-allowed.ts';
import { apiOf } from './workplace.ts';

/** What a label is on. */
export type LabelBearer =
  | { readonly is: 'batch'; readonly code: string; readonly batch: Batch }
  | { readonly is: 'donorTree' | 'place'; readonly code: string; readonly id: string }
  /** From a roll, and on nothing yet. */
  | { readonly is: 'unclaimed'; readonly code: string };

/** So often plants may have gone on since they were given the label; a line is no longer than its stages. */
const STEPS = 6;

/** What bears a label in a programme; nothing where none does, or the caller may not see it. */
export async function labelBearer(programme: string, code: string): Promise<LabelBearer | undefined> {
  const label = (await readIfAllowed(apiOf(programme, 'labels', code), Label))?.body;
  if (!label) return undefined;
  const batch = await whereItWent(programme, label.batchId);
  return batch && { is: 'batch', code: label.code, batch };
}

/** The batch itself, or the one that all its plants went on to. */
async function whereItWent(programme: string, id: string): Promise<Batch | undefined> {
  const labelled = await batchOf(programme, id);
  let at = labelled;
  for (let step = 0; at && at.balance === 0 && step < STEPS; step += 1) {
    const next = onlyLiving(at.line.children);
    at = next === undefined ? undefined : await batchOf(programme, next);
  }
  return at && at.balance > 0 ? at : labelled;
}

const batchOf = async (programme: string, id: string): Promise<Batch | undefined> => (await readIfAllowed(apiOf(programme, 'batches', id), Batch))?.body;

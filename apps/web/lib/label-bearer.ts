import 'server-only';
import { Batch, Label } from '@sprigline/contract';
import { headers } from 'next/headers';
import { redirect } from 'next/navigation';
import { ask } from './api.ts';
import { onlyLiving } from './only-living.ts';
import { readIfAllowed } from './read-if-allowed.ts';
import { Refused } from './refused.ts';
import { apiOf } from './workplace.ts';

/** What a label is on. */
export type LabelBearer =
  | { readonly is: 'batch'; readonly code: string; readonly batch: Batch }
  | { readonly is: 'donorTree' | 'place'; readonly code: string; readonly id: string }
  /** From a roll, and on nothing yet. */
  | { readonly is: 'unclaimed'; readonly code: string };

/** So often plants may have gone on since they were given the label; a line is no longer than its stages. */
const STEPS = 6;

/** What bears a label in a programme; nothing where none does, the caller may not see it, or no label can be called so. */
export async function labelBearer(programme: string, code: string): Promise<LabelBearer | undefined> {
  const label = await labelNamed(programme, code);
  if (!label) return undefined;
  if (label.is === 'unclaimed') return { is: 'unclaimed', code: label.code };
  if (label.is !== 'batch') return { is: label.is, code: label.code, id: label.id };
  const batch = await whereItWent(programme, label.id);
  return batch && { is: 'batch', code: label.code, batch };
}

async function labelNamed(programme: string, code: string): Promise<Label | undefined> {
  try {
    return (await ask(apiOf(programme, 'labels', code), Label)).body;
  } catch (error) {
    if (!(error instanceof Refused)) throw error;
    // Who was signed out meanwhile is not told that nothing bears it.
    if (error.problem.status === 401) redirect(`/sign-in?next=${encodeURIComponent((await headers()).get('x-pathname') ?? '/')}`);
    // Unknown, not for this person, a slip of the pen, or longer than any label.
    if ([403, 404, 422].includes(error.problem.status)) return undefined;
    throw error;
  }
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

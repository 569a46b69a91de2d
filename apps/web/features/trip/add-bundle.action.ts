'use server';

import { revalidatePath } from 'next/cache';
import type { FormState } from '../../lib/form-state.ts';
import { text } from '../../lib/form-values.ts';
import { pageOf } from '../../lib/page-address.ts';
import { addRecord } from '../../lib/records.ts';
import { submit } from '../../lib/submit.ts';
import { bundleSaid } from './trip-said.ts';

export async function addBundle(programme: string, tripId: string, before: FormState, form: FormData): Promise<FormState> {
  const state = await submit(before, form, () => addRecord(programme, ['trips', tripId, 'bundles'], { id: text(form, 'id'), ...bundleSaid(form) }));
  // The page is made anew and hands the form the id of the next bundle.
  if (state.isDone) revalidatePath(pageOf(programme, 'trips', tripId));
  return state;
}

'use server';

import { LabelLine } from '@sprigline/contract';
import { revalidatePath } from 'next/cache';
import { z } from 'zod';
import { ask } from '../../lib/api.ts';
import type { FormState } from '../../lib/form-state.ts';
import { pageOf } from '../../lib/page-address.ts';
import { submit } from '../../lib/submit.ts';
import { apiOf } from '../../lib/workplace.ts';
import type { LabelsAsked } from './label-choice.ts';

/** Draws a code for each of the chosen things that has none. */
export async function giveMissing(programme: string, { of, placeId, standId, ids }: LabelsAsked, before: FormState, form: FormData): Promise<FormState> {
  const choice = ids.length > 0 ? { of, ids } : { of, placeId, standId };
  const state = await submit(before, form, () => ask(apiOf(programme, 'labels', 'missing'), z.array(LabelLine), { method: 'POST', body: choice }));
  if (state.isDone) revalidatePath(pageOf(programme, 'labels', 'print'));
  return state;
}

'use server';

import { revalidatePath } from 'next/cache';
import type { FormState } from '../../lib/form-state.ts';
import { number, text } from '../../lib/form-values.ts';
import { pageOf } from '../../lib/page-address.ts';
import { addRecord } from '../../lib/records.ts';
import { submit } from '../../lib/submit.ts';

export async function addPlot(programme: string, siteId: string, before: FormState, form: FormData): Promise<FormState> {
  const plot = { id: text(form, 'id'), name: text(form, 'name'), walkOrder: number(form, 'walkOrder'), note: text(form, 'note') };
  const state = await submit(before, form, () => addRecord(programme, ['sites', siteId, 'plots'], plot));
  if (state.isDone) revalidatePath(pageOf(programme, 'sites', siteId));
  return state;
}

'use server';

import { revalidatePath } from 'next/cache';
import type { FormState } from '../../lib/form-state.ts';
import { text } from '../../lib/form-values.ts';
import { pageOf } from '../../lib/page-address.ts';
import { addRecord } from '../../lib/records.ts';
import { submit } from '../../lib/submit.ts';

/** Somebody who works here and needs no account: only a name, to say who saw what. */
export async function addPerson(programme: string, before: FormState, form: FormData): Promise<FormState> {
  const state = await submit(before, form, () => addRecord(programme, ['people'], { id: text(form, 'id'), name: text(form, 'name') }));
  if (state.isDone) revalidatePath(pageOf(programme, 'people'));
  return state;
}

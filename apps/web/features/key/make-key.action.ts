'use server';

import { MadeKey } from '@sprigline/contract';
import { revalidatePath } from 'next/cache';
import { ask } from '../../lib/api.ts';
import type { FormState } from '../../lib/form-state.ts';
import { number, several, text } from '../../lib/form-values.ts';
import { pageOf } from '../../lib/page-address.ts';
import { submit } from '../../lib/submit.ts';
import { apiOf } from '../../lib/workplace.ts';

/** Makes a key and shows it, this once: it is kept nowhere in the clear. */
export async function makeKey(programme: string, before: FormState, form: FormData): Promise<FormState> {
  const body = {
    id: text(form, 'id'), name: text(form, 'name'), partnerId: text(form, 'partnerId'), scopes: several(form, 'scopes'), days: number(form, 'days'),
  };
  let made = '';
  const state = await submit(before, form, async () => {
    made = (await ask(apiOf(programme, 'keys'), MadeKey, { method: 'POST', body })).body.key;
  });
  if (!state.isDone) return state;
  revalidatePath(pageOf(programme, 'keys'));
  return { ...state, made };
}

'use server';

import { MadeLink } from '@sprigline/contract';
import { ask } from '../../lib/api.ts';
import type { FormState } from '../../lib/form-state.ts';
import { text } from '../../lib/form-values.ts';
import { submit } from '../../lib/submit.ts';
import { apiOf } from '../../lib/workplace.ts';

/** A link by which somebody chooses a new password; shown this once. */
export async function makeResetLink(programme: string, personId: string, before: FormState, form: FormData): Promise<FormState> {
  let made = '';
  const state = await submit(before, form, async () => {
    made = (await ask(apiOf(programme, 'people', personId, 'reset-links'), MadeLink, { method: 'POST', body: { id: text(form, 'id') } })).body.link;
  });
  return state.isDone ? { ...state, made } : state;
}

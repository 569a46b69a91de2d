'use server';

import { MadeLink } from '@sprigline/contract';
import { revalidatePath } from 'next/cache';
import { ask } from '../../lib/api.ts';
import type { FormState } from '../../lib/form-state.ts';
import { isTicked, text } from '../../lib/form-values.ts';
import { pageOf } from '../../lib/page-address.ts';
import { submit } from '../../lib/submit.ts';
import { apiOf } from '../../lib/workplace.ts';

/** Makes an invitation and shows its link, this once: it is kept nowhere in the clear. */
export async function invite(programme: string, before: FormState, form: FormData): Promise<FormState> {
  const role = text(form, 'role');
  const body = {
    id: text(form, 'id'),
    forName: text(form, 'forName'),
    role,
    partnerId: role === 'partner' ? text(form, 'partnerId') : undefined,
    personId: text(form, 'personId'),
    seesExact: isTicked(form, 'seesExact'),
  };
  let made = '';
  const state = await submit(before, form, async () => {
    made = (await ask(apiOf(programme, 'invitations'), MadeLink, { method: 'POST', body })).body.link;
  });
  if (!state.isDone) return state;
  revalidatePath(pageOf(programme, 'people'));
  return { ...state, made, ...(body.forName !== undefined && { madeFor: body.forName }) };
}

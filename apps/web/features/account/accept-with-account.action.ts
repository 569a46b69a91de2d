'use server';

import { Joined } from '@sprigline/contract';
import { redirect } from 'next/navigation';
import { ask } from '../../lib/api.ts';
import type { FormState } from '../../lib/form-state.ts';
import { pageOf } from '../../lib/page-address.ts';
import { submit } from '../../lib/submit.ts';

/** Takes an invitation as who is signed in. */
export async function acceptWithAccount(token: string, before: FormState, form: FormData): Promise<FormState> {
  let handle = '';
  const state = await submit(before, form, async () => {
    handle = (await ask(`/api/v1/invitations/${encodeURIComponent(token)}/acceptance`, Joined, { method: 'POST', body: {} })).body.programme;
  });
  if (state.isDone) redirect(pageOf(handle));
  return state;
}

'use server';

import { Joined } from '@sprigline/contract';
import { redirect } from 'next/navigation';
import { ask } from '../../lib/api.ts';
import type { FormState } from '../../lib/form-state.ts';
import { pageOf } from '../../lib/page-address.ts';
import { submit } from '../../lib/submit.ts';
import { accountSaid } from './account-said.ts';
import { openSession } from './open-session.ts';

/** Takes an invitation with a new account, and goes in. */
export async function acceptNewly(token: string, before: FormState, form: FormData): Promise<FormState> {
  const account = accountSaid(form);
  let handle = '';
  const state = await submit(before, form, async () => {
    handle = (await ask(`/api/v1/invitations/${encodeURIComponent(token)}/account`, Joined, { method: 'POST', body: account })).body.programme;
    await openSession(account.email, account.password);
  });
  if (state.isDone) redirect(pageOf(handle));
  return state;
}

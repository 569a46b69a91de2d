'use server';

import { Joined } from '@sprigline/contract';
import { redirect } from 'next/navigation';
import { ask } from '../../lib/api.ts';
import type { FormState } from '../../lib/form-state.ts';
import { text } from '../../lib/form-values.ts';
import { pageOf } from '../../lib/page-address.ts';
import { submit } from '../../lib/submit.ts';
import { accountSaid } from './account-said.ts';
import { openSession } from './open-session.ts';

/** The first account and the first programme of an empty install. */
export async function setUp(token: string, before: FormState, form: FormData): Promise<FormState> {
  const account = accountSaid(form, 'account/');
  const programme = { handle: text(form, 'programme/handle'), name: text(form, 'programme/name'), zone: text(form, 'programme/zone') };
  let handle = '';
  const state = await submit(before, form, async () => {
    const { body } = await ask('/api/v1/setup', Joined, { method: 'POST', body: { token, account, programme } });
    handle = body.programme;
    await openSession(account.email, account.password);
  });
  if (state.isDone) redirect(pageOf(handle));
  return state;
}

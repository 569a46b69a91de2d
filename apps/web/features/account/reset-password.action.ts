'use server';

import { redirect } from 'next/navigation';
import { z } from 'zod';
import { ask } from '../../lib/api.ts';
import type { FormState } from '../../lib/form-state.ts';
import { submit } from '../../lib/submit.ts';
import { accountSaid } from './account-said.ts';

/** Sets a new password by a link that a coordinator made. Every session of the account ends. */
export async function resetPassword(token: string, before: FormState, form: FormData): Promise<FormState> {
  const { password } = accountSaid(form);
  const state = await submit(before, form, () => ask(`/api/v1/reset-links/${encodeURIComponent(token)}`, z.unknown(), { method: 'POST', body: { password } }));
  if (state.isDone) redirect('/sign-in?reset');
  return state;
}

'use server';

import { redirect } from 'next/navigation';
import type { FormState } from '../../lib/form-state.ts';
import { text } from '../../lib/form-values.ts';
import { submit } from '../../lib/submit.ts';
import { wayBack } from '../../lib/way-back.ts';
import { accountSaid } from './account-said.ts';
import { openSession } from './open-session.ts';

/** Opens a session and goes back to where the person was heading. */
export async function signIn(before: FormState, form: FormData): Promise<FormState> {
  const { email, password } = accountSaid(form);
  const state = await submit(before, form, () => openSession(email, password));
  if (state.isDone) redirect(wayBack(text(form, 'next')));
  return state;
}

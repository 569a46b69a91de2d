'use server';

import { redirect } from 'next/navigation';
import { z } from 'zod';
import { ask } from '../../lib/api.ts';
import type { FormState } from '../../lib/form-state.ts';
import { text } from '../../lib/form-values.ts';
import { passCookiesOn } from '../../lib/pass-cookies.ts';
import { submit } from '../../lib/submit.ts';
import { wayBack } from '../../lib/way-back.ts';

/** Opens a session and goes back to where the person was heading. */
export async function signIn(before: FormState, form: FormData): Promise<FormState> {
  const state = await submit(before, form, async () => {
    // Not trimmed: a password may well begin with a space.
    const body = { email: text(form, 'email') ?? '', password: form.get('password') ?? '' };
    const { headers } = await ask('/api/auth/sign-in/email', z.unknown(), { method: 'POST', body });
    await passCookiesOn(headers);
  });
  if (state.isDone) redirect(wayBack(text(form, 'next')));
  return state.problem ? { ...state, problem: inOurWords(state.problem) } : state;
}

/** The sign-in library has statuses and no codes of ours. Which of the two was wrong is not said to anybody. */
function inOurWords(problem: NonNullable<FormState['problem']>): NonNullable<FormState['problem']> {
  if (problem.status === 429) return { ...problem, type: '/problems/account/too-many-tries' };
  if (problem.status < 500) return { ...problem, type: '/problems/account/wrong-password', status: 422 };
  return problem;
}

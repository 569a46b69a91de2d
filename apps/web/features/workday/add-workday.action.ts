'use server';

import { redirect } from 'next/navigation';
import type { FormState } from '../../lib/form-state.ts';
import { text } from '../../lib/form-values.ts';
import { pageOf } from '../../lib/page-address.ts';
import { addRecord } from '../../lib/records.ts';
import { rememberWorkday } from '../../lib/remember-workday.ts';
import { submit } from '../../lib/submit.ts';
import { workdaySaid } from './workday-said.ts';

/** Whoever writes the workday down works on it: the device remembers it for what is logged next. */
export async function addWorkday(programme: string, before: FormState, form: FormData): Promise<FormState> {
  const id = text(form, 'id') ?? '';
  const state = await submit(before, form, () => addRecord(programme, ['workdays'], { id, ...workdaySaid(form) }));
  if (!state.isDone) return state;
  await rememberWorkday(form, 'id');
  redirect(pageOf(programme, 'workdays', id));
}

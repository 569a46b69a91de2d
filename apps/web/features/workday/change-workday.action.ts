'use server';

import { redirect } from 'next/navigation';
import type { FormState } from '../../lib/form-state.ts';
import { pageOf } from '../../lib/page-address.ts';
import { changeRecord } from '../../lib/records.ts';
import { submit } from '../../lib/submit.ts';
import { workdaySaid } from './workday-said.ts';

export async function changeWorkday(programme: string, id: string, etag: string, before: FormState, form: FormData): Promise<FormState> {
  const state = await submit(before, form, () => changeRecord(programme, ['workdays', id], etag, workdaySaid(form)));
  if (state.isDone) redirect(pageOf(programme, 'workdays', id));
  return state;
}

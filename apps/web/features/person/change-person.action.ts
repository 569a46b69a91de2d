'use server';

import { redirect } from 'next/navigation';
import type { FormState } from '../../lib/form-state.ts';
import { isTicked, text } from '../../lib/form-values.ts';
import { pageOf } from '../../lib/page-address.ts';
import { changeRecord } from '../../lib/records.ts';
import { submit } from '../../lib/submit.ts';

/** Role and grant are only sent where the form showed them: people by name, and of partners, have neither. */
export async function changePerson(programme: string, id: string, etag: string, before: FormState, form: FormData): Promise<FormState> {
  const role = text(form, 'role');
  const body = { name: text(form, 'name'), ...(role === undefined ? {} : { role }), ...(form.has('asksSeesExact') ? { seesExact: isTicked(form, 'seesExact') } : {}) };
  const state = await submit(before, form, () => changeRecord(programme, ['people', id], etag, body, 'PATCH'));
  if (state.isDone) redirect(pageOf(programme, 'people'));
  return state;
}

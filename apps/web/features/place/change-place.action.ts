'use server';

import { redirect } from 'next/navigation';
import type { FormState } from '../../lib/form-state.ts';
import { text } from '../../lib/form-values.ts';
import { pageOf } from '../../lib/page-address.ts';
import { changeRecord } from '../../lib/records.ts';
import { submit } from '../../lib/submit.ts';
import { placeContentSaid } from './place-said.ts';

export async function changePlace(programme: string, id: string, etag: string, before: FormState, form: FormData): Promise<FormState> {
  const body = { ...placeContentSaid(form), closedOn: text(form, 'closedOn') };
  const state = await submit(before, form, () => changeRecord(programme, ['places', id], etag, body));
  if (state.isDone) redirect(pageOf(programme, 'places', id));
  return state;
}

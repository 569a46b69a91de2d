'use server';

import { redirect } from 'next/navigation';
import type { FormState } from '../../lib/form-state.ts';
import { text } from '../../lib/form-values.ts';
import { pageOf } from '../../lib/page-address.ts';
import { changeRecord } from '../../lib/records.ts';
import { submit } from '../../lib/submit.ts';

/** @param etag empty while there is no note */
export async function saveNote(programme: string, tripId: string, etag: string, before: FormState, form: FormData): Promise<FormState> {
  const state = await submit(before, form, () => changeRecord(programme, ['trips', tripId, 'note'], etag, { note: text(form, 'note') }));
  if (state.isDone) redirect(pageOf(programme, 'trips', tripId));
  return state;
}

'use server';

import { redirect } from 'next/navigation';
import type { FormState } from '../../lib/form-state.ts';
import { text } from '../../lib/form-values.ts';
import { pageOf } from '../../lib/page-address.ts';
import { addRecord } from '../../lib/records.ts';
import { submit } from '../../lib/submit.ts';

/** A wrong reading stays readable, and is counted no more. */
export async function setAsideReading(programme: string, placeId: string, id: string, before: FormState, form: FormData): Promise<FormState> {
  const state = await submit(before, form, () => addRecord(programme, ['climate', id, 'setting-aside'], { reason: text(form, 'reason') }));
  if (state.isDone) redirect(pageOf(programme, 'places', placeId, 'climate'));
  return state;
}

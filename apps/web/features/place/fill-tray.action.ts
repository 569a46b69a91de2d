'use server';

import { redirect } from 'next/navigation';
import type { FormState } from '../../lib/form-state.ts';
import { pageOf } from '../../lib/page-address.ts';
import { addRecord } from '../../lib/records.ts';
import { submit } from '../../lib/submit.ts';
import { fillingSaid } from './place-said.ts';

export async function fillTray(programme: string, placeId: string, before: FormState, form: FormData): Promise<FormState> {
  const state = await submit(before, form, () => addRecord(programme, ['places', placeId, 'fillings'], fillingSaid(form)));
  if (state.isDone) redirect(pageOf(programme, 'places', placeId));
  return state;
}

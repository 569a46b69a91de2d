'use server';

import { redirect } from 'next/navigation';
import type { FormState } from '../../lib/form-state.ts';
import { text } from '../../lib/form-values.ts';
import { pageOf } from '../../lib/page-address.ts';
import { addRecord } from '../../lib/records.ts';
import { submit } from '../../lib/submit.ts';
import { regimeSaid } from './regime-said.ts';

/** From a day on a place is kept otherwise; what was before ends by itself. */
export async function addRegime(programme: string, placeId: string, before: FormState, form: FormData): Promise<FormState> {
  const state = await submit(before, form, () => addRecord(programme, ['places', placeId, 'regimes'], { id: text(form, 'id'), ...regimeSaid(form) }));
  if (state.isDone) redirect(pageOf(programme, 'places', placeId));
  return state;
}

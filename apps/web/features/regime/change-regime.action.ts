'use server';

import { redirect } from 'next/navigation';
import type { FormState } from '../../lib/form-state.ts';
import { pageOf } from '../../lib/page-address.ts';
import { changeRecord } from '../../lib/records.ts';
import { submit } from '../../lib/submit.ts';
import { regimeSaid } from './regime-said.ts';

/** For a slip in what was written. */
export async function changeRegime(programme: string, placeId: string, id: string, etag: string, before: FormState, form: FormData): Promise<FormState> {
  const state = await submit(before, form, () => changeRecord(programme, ['regimes', id], etag, regimeSaid(form)));
  if (state.isDone) redirect(pageOf(programme, 'places', placeId));
  return state;
}

'use server';

import { redirect } from 'next/navigation';
import { exactPlaceSaid } from '../../lib/exact-place-said.ts';
import type { FormState } from '../../lib/form-state.ts';
import { pageOf } from '../../lib/page-address.ts';
import { changeRecord } from '../../lib/records.ts';
import { submit } from '../../lib/submit.ts';

/** @param etag empty when no place has been told yet */
export async function saveExactPlace(programme: string, noun: 'stands' | 'donor-trees', id: string, etag: string, before: FormState, form: FormData): Promise<FormState> {
  const state = await submit(before, form, () => changeRecord(programme, [noun, id, 'exact-place'], etag, exactPlaceSaid(form) ?? {}));
  if (state.isDone) redirect(pageOf(programme, noun, id));
  return state;
}

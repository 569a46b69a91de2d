'use server';

import { Programme } from '@sprigline/contract';
import { redirect } from 'next/navigation';
import { ask } from '../../lib/api.ts';
import type { FormState } from '../../lib/form-state.ts';
import { text } from '../../lib/form-values.ts';
import { pageOf } from '../../lib/page-address.ts';
import { submit } from '../../lib/submit.ts';

/** Another programme on the same install, kept apart from the others. */
export async function openProgramme(before: FormState, form: FormData): Promise<FormState> {
  const body = { id: text(form, 'id'), handle: text(form, 'handle'), name: text(form, 'name'), zone: text(form, 'zone') };
  const state = await submit(before, form, () => ask('/api/v1/programmes', Programme, { method: 'POST', body }));
  if (state.isDone) redirect(pageOf(body.handle ?? ''));
  return state;
}

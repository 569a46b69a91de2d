'use server';

import { revalidatePath } from 'next/cache';
import type { FormState } from '../../lib/form-state.ts';
import { text } from '../../lib/form-values.ts';
import { pageOf } from '../../lib/page-address.ts';
import { addRecord } from '../../lib/records.ts';
import { submit } from '../../lib/submit.ts';

/** Lost, or no longer used: it is not asked after any more, until it is heard again. */
export async function putAside(programme: string, before: FormState, form: FormData): Promise<FormState> {
  const state = await submit(before, form, () => addRecord(programme, ['devices', text(form, 'device') ?? '', 'setting-aside'], { reason: text(form, 'reason') }));
  if (state.isDone) revalidatePath(pageOf(programme, 'people', 'phones'));
  return state;
}

'use server';

import { revalidatePath } from 'next/cache';
import type { FormState } from '../../lib/form-state.ts';
import { pageOf } from '../../lib/page-address.ts';
import { addRecord } from '../../lib/records.ts';
import { submit } from '../../lib/submit.ts';

/** @param until the moment of the page: what arrived since then is still new */
export async function seenNews(programme: string, until: string, before: FormState, form: FormData): Promise<FormState> {
  const state = await submit(before, form, () => addRecord(programme, ['news', 'seen'], { until }));
  if (state.isDone) revalidatePath(pageOf(programme));
  return state;
}

'use server';

import { Import } from '@sprigline/contract';
import { revalidatePath } from 'next/cache';
import { redirect } from 'next/navigation';
import { ask } from '../../lib/api.ts';
import type { FormState } from '../../lib/form-state.ts';
import { isTicked } from '../../lib/form-values.ts';
import { pageOf } from '../../lib/page-address.ts';
import { submit } from '../../lib/submit.ts';
import { apiOf } from '../../lib/workplace.ts';

/** Begins writing a sheet into the books. */
export async function writeSheet(programme: string, id: string, before: FormState, form: FormData): Promise<FormState> {
  const state = await submit(before, form, () =>
    ask(apiOf(programme, 'imports', id, 'writing'), Import, { method: 'POST', body: { replaceChanged: isTicked(form, 'replaceChanged') } }),
  );
  // The way leads to the same page, which would otherwise be shown as it was.
  if (state.isDone) revalidatePath(pageOf(programme, 'import', id));
  if (state.isDone) redirect(pageOf(programme, 'import', id));
  return state;
}

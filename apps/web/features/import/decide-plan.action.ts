'use server';

import { Import } from '@sprigline/contract';
import { revalidatePath } from 'next/cache';
import { redirect } from 'next/navigation';
import { ask } from '../../lib/api.ts';
import type { FormState } from '../../lib/form-state.ts';
import { pageOf } from '../../lib/page-address.ts';
import { submit } from '../../lib/submit.ts';
import { apiOf } from '../../lib/workplace.ts';
import { planSaid } from './plan-said.ts';

/** Says how a sheet is to be read, then shows what writing it would do. */
export async function decidePlan(programme: string, id: string, before: FormState, form: FormData): Promise<FormState> {
  const state = await submit(before, form, async () => {
    const { body: sheet } = await ask(apiOf(programme, 'imports', id), Import);
    await ask(apiOf(programme, 'imports', id, 'plan'), Import, { method: 'PUT', body: planSaid(sheet, form) });
  });
  // The way leads to the same page, which would otherwise be shown as it was.
  if (state.isDone) revalidatePath(pageOf(programme, 'import', id));
  if (state.isDone) redirect(`${pageOf(programme, 'import', id)}#what-it-would-do`);
  return state;
}

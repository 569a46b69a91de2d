'use server';

import { redirect } from 'next/navigation';
import type { FormState } from '../../lib/form-state.ts';
import { pageOf } from '../../lib/page-address.ts';
import { addRecord } from '../../lib/records.ts';
import { submit } from '../../lib/submit.ts';
import { versionSaid } from './recipe-said.ts';

/** A recipe is never changed: what is done otherwise from now on is its next version. */
export async function addVersion(programme: string, recipeId: string, before: FormState, form: FormData): Promise<FormState> {
  const state = await submit(before, form, () => addRecord(programme, ['recipes', recipeId, 'versions'], versionSaid(form)));
  if (state.isDone) redirect(pageOf(programme, 'recipes', recipeId));
  return state;
}

'use server';

import { revalidatePath } from 'next/cache';
import type { FormState } from '../../lib/form-state.ts';
import { number, text } from '../../lib/form-values.ts';
import { pageOf } from '../../lib/page-address.ts';
import { changeRecord } from '../../lib/records.ts';
import { submit } from '../../lib/submit.ts';

export async function changeSettings(programme: string, etag: string, before: FormState, form: FormData): Promise<FormState> {
  const body = {
    name: text(form, 'name'),
    zone: text(form, 'zone'),
    seasonStartsIn: number(form, 'seasonStartsIn'),
    rootedMeans: text(form, 'rootedMeans'),
    readyMeans: text(form, 'readyMeans'),
    gradeCheckEveryDays: number(form, 'gradeCheckEveryDays'),
  };
  const state = await submit(before, form, () => changeRecord(programme, [], etag, body, 'PATCH'));
  if (state.isDone) revalidatePath(pageOf(programme), 'layout');
  return state;
}

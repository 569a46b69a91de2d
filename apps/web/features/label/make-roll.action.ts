'use server';

import type { Route } from 'next';
import { redirect } from 'next/navigation';
import type { FormState } from '../../lib/form-state.ts';
import { number, text } from '../../lib/form-values.ts';
import { pageOf } from '../../lib/page-address.ts';
import { addRecord } from '../../lib/records.ts';
import { submit } from '../../lib/submit.ts';

/** Draws a roll of codes and shows it. */
export async function makeRoll(programme: string, before: FormState, form: FormData): Promise<FormState> {
  const id = text(form, 'id') ?? '';
  const state = await submit(before, form, () => addRecord(programme, ['label-rolls'], { id, name: text(form, 'name'), n: number(form, 'n') }));
  if (state.isDone) redirect(pageOf(programme, 'labels', 'rolls', id) as Route);
  return state;
}

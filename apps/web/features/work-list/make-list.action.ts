'use server';

import { redirect } from 'next/navigation';
import type { Route } from 'next';
import type { FormState } from '../../lib/form-state.ts';
import { number, text } from '../../lib/form-values.ts';
import { pageOf } from '../../lib/page-address.ts';
import { addRecord } from '../../lib/records.ts';
import { submit } from '../../lib/submit.ts';

/** Makes a sheet of what belongs on it now. */
export async function makeList(programme: string, before: FormState, form: FormData): Promise<FormState> {
  const id = text(form, 'id') ?? '';
  const asked = {
    placeId: text(form, 'asked/placeId'), standId: text(form, 'asked/standId'), taxonId: text(form, 'asked/taxonId'), toPlaceId: text(form, 'asked/toPlaceId'),
    days: number(form, 'asked/days'), atMost: number(form, 'asked/atMost'),
  };
  const state = await submit(before, form, () => addRecord(programme, ['work-lists'], { id, kind: text(form, 'kind'), asked }));
  if (state.isDone) redirect(pageOf(programme, 'work-lists', id) as Route);
  return state;
}

'use server';

import { redirect } from 'next/navigation';
import type { FormState } from '../../lib/form-state.ts';
import { day, text } from '../../lib/form-values.ts';
import { pageOf } from '../../lib/page-address.ts';
import { addRecord } from '../../lib/records.ts';
import { submit } from '../../lib/submit.ts';

/** A tray, or a bench, is carried elsewhere with all it holds. */
export async function movePlace(programme: string, placeId: string, before: FormState, form: FormData): Promise<FormState> {
  const move = { id: text(form, 'id'), toPlaceId: text(form, 'toPlaceId'), movedOn: day(form, 'movedOn') };
  const state = await submit(before, form, () => addRecord(programme, ['places', placeId, 'moves'], move));
  if (state.isDone) redirect(pageOf(programme, 'places', placeId));
  return state;
}

'use server';

import { redirect } from 'next/navigation';
import type { FormState } from '../../lib/form-state.ts';
import { day, isTicked, text } from '../../lib/form-values.ts';
import { pageOf } from '../../lib/page-address.ts';
import { addRecord } from '../../lib/records.ts';
import { rememberWorkday } from '../../lib/remember-workday.ts';
import { submit } from '../../lib/submit.ts';
import { linesSaid } from './request-said.ts';

/** Writes the plants out of the books. The ids of the entries were made with the page, so that pressing twice despatches once. */
export async function despatchRequest(programme: string, id: string, before: FormState, form: FormData): Promise<FormState> {
  const state = await submit(before, form, () => addRecord(programme, ['requests', id, 'despatch'], despatchSaid(form)));
  if (!state.isDone) return state;
  await rememberWorkday(form, 'workdayId');
  redirect(pageOf(programme, 'requests', id, 'note'));
}

const despatchSaid = (form: FormData) => ({
  observedOn: day(form, 'observedOn'),
  placeId: text(form, 'placeId'),
  workdayId: text(form, 'workdayId'),
  note: text(form, 'note'),
  confirm: isTicked(form, 'confirm'),
  lines: linesSaid(form).map(({ batchId, n }) => ({
    batchId, n, entryId: text(form, `entry/${batchId}`), toBatchId: text(form, `to/${batchId}`), label: text(form, `label/${batchId}`),
  })),
});

'use server';

import { redirect } from 'next/navigation';
import { entrySaid, SAYING } from '../../lib/entry-said.ts';
import type { FormState } from '../../lib/form-state.ts';
import { isTicked, number, text } from '../../lib/form-values.ts';
import { writeEntry } from '../../lib/ledger.ts';
import { pageOf } from '../../lib/page-address.ts';
import { submit } from '../../lib/submit.ts';

/** Plants that came in at a stage: opening stock, a return, from a partner, bought. */
export async function bringIn(programme: string, before: FormState, form: FormData): Promise<FormState> {
  const words = (name: string) => text(form, `${SAYING}${name}`);
  const batchId = words('batchId') ?? '';
  const saying = {
    kind: 'received', batchId, stickingId: words('stickingId'), stage: words('stage'), n: number(form, `${SAYING}n`), source: words('source'),
    donorTreeId: words('donorTreeId'), taxonId: words('taxonId'), stuckOn: words('stuckOn'), rooted: number(form, `${SAYING}rooted`), placeId: words('placeId'),
    label: words('label'), rows: words('rows'), container: words('container'), medium: words('medium'),
  };
  const state = await submit(before, form, () => writeEntry(programme, entrySaid(form, saying), isTicked(form, 'confirm')));
  if (state.isDone) redirect(pageOf(programme, 'batches', batchId));
  return state;
}

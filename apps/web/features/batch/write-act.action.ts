'use server';

import { redirect } from 'next/navigation';
import { ENTRY, entrySaid } from '../../lib/entry-said.ts';
import type { FormState } from '../../lib/form-state.ts';
import { isTicked } from '../../lib/form-values.ts';
import { writeEntry } from '../../lib/ledger.ts';
import { pageOf } from '../../lib/page-address.ts';
import { rememberWorkday } from '../../lib/remember-workday.ts';
import { submit } from '../../lib/submit.ts';
import { actSaid } from './act-said.ts';
import type { Act } from './acts.ts';

/** Writes what was seen of a batch or done with it. */
export async function writeAct(programme: string, batchId: string, act: Act, before: FormState, form: FormData): Promise<FormState> {
  const state = await submit(before, form, () => writeEntry(programme, entrySaid(form, actSaid(act, batchId, form)), isTicked(form, 'confirm')));
  if (!state.isDone) return state;
  await rememberWorkday(form, `${ENTRY}workdayId`);
  redirect(`${pageOf(programme, 'batches', batchId)}?wrote=${act}#history`);
}

'use server';

import { redirect } from 'next/navigation';
import { entrySaid, SAYING } from '../../lib/entry-said.ts';
import type { FormState } from '../../lib/form-state.ts';
import { isTicked, text } from '../../lib/form-values.ts';
import { writeEntry } from '../../lib/ledger.ts';
import { pageOf } from '../../lib/page-address.ts';
import { submit } from '../../lib/submit.ts';

/** Ticks are named by this and the batch. */
const TICK = 'hold/';

/** Holds all ticked batches by one entry. */
export async function holdTraced(programme: string, query: string, before: FormState, form: FormData): Promise<FormState> {
  const batchIds = [...form.keys()].filter((name) => name.startsWith(TICK)).map((name) => name.slice(TICK.length));
  const saying = { kind: 'held', batchIds, reason: text(form, `${SAYING}reason`), sample: text(form, `${SAYING}sample`) };
  const state = await submit(before, form, () => writeEntry(programme, entrySaid(form, saying), isTicked(form, 'confirm')));
  if (state.isDone) redirect(`${pageOf(programme, 'trace')}${query}`);
  return state;
}

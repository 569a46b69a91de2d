'use server';

import { redirect } from 'next/navigation';
import { entrySaid } from '../../lib/entry-said.ts';
import type { FormState } from '../../lib/form-state.ts';
import { isTicked, number, text } from '../../lib/form-values.ts';
import { writeEntry } from '../../lib/ledger.ts';
import { pageOf } from '../../lib/page-address.ts';
import { submit } from '../../lib/submit.ts';
import { actSaid } from './act-said.ts';
import type { Act } from './acts.ts';

export interface Target {
  readonly programme: string;
  readonly batchId: string;
  readonly entryId: string;
  /** The version that the person saw: somebody else may have mended it meanwhile. */
  readonly sawVersion: string;
}

/** Puts other numbers, or another day, in the place of what was written. The minute stays unless the day changes. */
export async function mend(target: Target, act: Act, was: { readonly day: string; readonly minute: number | null }, before: FormState, form: FormData): Promise<FormState> {
  const { observedOn, ...around } = entrySaid(form, {});
  const isSameDay = observedOn === was.day;
  const instead = { observedOn, ...(isSameDay && was.minute !== null ? { minute: was.minute } : {}), saying: actSaid(act, target.batchId, form) };
  return correct(target, { ...around, saying: { kind: 'replaced', instead } }, before, form);
}

/** Takes an entry out of the books. */
export async function withdraw(target: Target, before: FormState, form: FormData): Promise<FormState> {
  return correct(target, { ...entrySaid(form, {}), saying: { kind: 'withdrawn' } }, before, form);
}

async function correct({ programme, batchId, entryId, sawVersion }: Target, { saying, ...around }: { saying: object; id: string }, before: FormState, form: FormData): Promise<FormState> {
  const today = text(form, 'madeOn');
  // A correction is made today, whatever day it speaks of.
  const entry = { ...around, observedOn: today, minute: number(form, 'minute'), saying: { ...saying, entryId, sawVersion, reason: text(form, 'reason') } };
  const state = await submit(before, form, () => writeEntry(programme, entry, isTicked(form, 'confirm')));
  if (state.isDone) redirect(`${pageOf(programme, 'batches', batchId)}#entry-${entryId}`);
  return state;
}

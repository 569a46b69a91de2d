'use server';

import { redirect } from 'next/navigation';
import type { Route } from 'next';
import type { FormState } from '../../lib/form-state.ts';
import { day, text } from '../../lib/form-values.ts';
import { pageOf } from '../../lib/page-address.ts';
import { addRecord } from '../../lib/records.ts';
import { submit } from '../../lib/submit.ts';

/** Writes of which donor tree a sticking is. @param treeId left out: it is not known any more */
export async function determine(programme: string, stickingId: string, treeId: string | undefined, before: FormState, form: FormData): Promise<FormState> {
  const body = { id: text(form, 'id'), donorTreeId: treeId ?? null, determinedOn: day(form, 'determinedOn'), evidence: text(form, 'evidence') };
  const state = await submit(before, form, () => addRecord(programme, ['stickings', stickingId, 'determinations'], body));
  if (state.isDone) redirect(pageOf(programme, 'stickings', stickingId) as Route);
  return state;
}

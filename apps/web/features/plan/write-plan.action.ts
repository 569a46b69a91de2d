'use server';

import { redirect } from 'next/navigation';
import type { FormState } from '../../lib/form-state.ts';
import { text } from '../../lib/form-values.ts';
import { pageOf } from '../../lib/page-address.ts';
import { addRecord, changeRecord } from '../../lib/records.ts';
import { submit } from '../../lib/submit.ts';
import { planSaid, targetSaid } from './plan-said.ts';

export async function addPlan(programme: string, before: FormState, form: FormData): Promise<FormState> {
  const id = text(form, 'id') ?? '';
  const state = await submit(before, form, () => addRecord(programme, ['plans'], { id, ...planSaid(form) }));
  // The first thing to do with a new plan is to say what is wanted.
  if (state.isDone) redirect(pageOf(programme, 'plans', id, 'targets', 'new'));
  return state;
}

export async function changePlan(programme: string, id: string, etag: string, before: FormState, form: FormData): Promise<FormState> {
  return toPlan(programme, id, before, form, () => changeRecord(programme, ['plans', id], etag, planSaid(form)));
}

export async function addTarget(programme: string, id: string, before: FormState, form: FormData): Promise<FormState> {
  return toPlan(programme, id, before, form, () => addRecord(programme, ['plans', id, 'targets'], { id: text(form, 'id'), ...targetSaid(form) }));
}

export async function changeTarget(programme: string, id: string, targetId: string, etag: string, before: FormState, form: FormData): Promise<FormState> {
  return toPlan(programme, id, before, form, () => changeRecord(programme, ['plans', id, 'targets', targetId], etag, targetSaid(form)));
}

async function toPlan(programme: string, id: string, before: FormState, form: FormData, send: () => Promise<void>): Promise<FormState> {
  const state = await submit(before, form, send);
  if (state.isDone) redirect(pageOf(programme, 'plans', id));
  return state;
}

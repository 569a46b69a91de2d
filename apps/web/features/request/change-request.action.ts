'use server';

import { redirect } from 'next/navigation';
import type { FormState } from '../../lib/form-state.ts';
import { pageOf } from '../../lib/page-address.ts';
import { changeRecord } from '../../lib/records.ts';
import { submit } from '../../lib/submit.ts';
import { linesSaid, requestSaid } from './request-said.ts';

export async function changeRequest(programme: string, id: string, etag: string, before: FormState, form: FormData): Promise<FormState> {
  return change(programme, id, [], etag, before, form, requestSaid(form));
}

export async function changeRequestState(programme: string, id: string, etag: string, stateNow: string, before: FormState, form: FormData): Promise<FormState> {
  return change(programme, id, ['state'], etag, before, form, { state: stateNow });
}

export async function setPlantsAside(programme: string, id: string, etag: string, before: FormState, form: FormData): Promise<FormState> {
  return change(programme, id, ['reservations'], etag, before, form, { lines: linesSaid(form) });
}

async function change(programme: string, id: string, part: readonly string[], etag: string, before: FormState, form: FormData, body: object): Promise<FormState> {
  const state = await submit(before, form, () => changeRecord(programme, ['requests', id, ...part], etag, body));
  if (state.isDone) redirect(pageOf(programme, 'requests', id));
  return state;
}

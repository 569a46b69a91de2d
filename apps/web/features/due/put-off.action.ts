'use server';

import { redirect } from 'next/navigation';
import type { Route } from 'next';
import type { FormState } from '../../lib/form-state.ts';
import { text } from '../../lib/form-values.ts';
import { pageOf } from '../../lib/page-address.ts';
import { addRecord } from '../../lib/records.ts';
import { submit } from '../../lib/submit.ts';

/** The thing that is put off, as the list showed it. */
export interface PutOffThing {
  readonly kind: string;
  readonly placeId?: string | undefined;
  readonly batchId?: string | undefined;
  readonly seasonYear?: number | undefined;
  readonly dueOn: string;
}

export async function putOff(programme: string, thing: PutOffThing, before: FormState, form: FormData): Promise<FormState> {
  const body = { id: text(form, 'id'), ...thing, until: text(form, 'until'), reason: text(form, 'reason') };
  const state = await submit(before, form, () => addRecord(programme, ['due', 'put-offs'], body));
  if (state.isDone) redirect(`${pageOf(programme, 'due')}?done=1` as Route);
  return state;
}

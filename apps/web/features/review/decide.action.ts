'use server';

import { redirect } from 'next/navigation';
import type { Route } from 'next';
import type { FormState } from '../../lib/form-state.ts';
import { text } from '../../lib/form-values.ts';
import { addRecord } from '../../lib/records.ts';
import { submit } from '../../lib/submit.ts';
import { backTo } from './back-to.ts';

/** One flag, and the id of the decision that is made about it here. */
export interface Decided {
  readonly id: string;
  readonly entryId: string;
  readonly batchId?: string | undefined;
  readonly code: string;
}

/** Comes back to the part of the list, `kept`, that it was decided on. */
export async function decide(programme: string, kept: string, flag: Decided, before: FormState, form: FormData): Promise<FormState> {
  // The quick way has no fields: it accepts.
  const decision = text(form, 'decision') ?? 'accepted';
  const assignedTo = decision === 'assigned' ? text(form, 'assignedTo') : undefined;
  const state = await submit(before, form, () => addRecord(programme, ['review'], { ...flag, decision, assignedTo, note: text(form, 'note') }));
  if (state.isDone) redirect(backTo(programme, kept, 1) as Route);
  return state;
}

'use server';

import { redirect } from 'next/navigation';
import type { Route } from 'next';
import type { FormState } from '../../lib/form-state.ts';
import { text } from '../../lib/form-values.ts';
import { addRecord } from '../../lib/records.ts';
import { submit } from '../../lib/submit.ts';
import { backTo } from './back-to.ts';
import { doubtOf } from './item-key.ts';

/** Accepts every doubt that is ticked, for one reason. */
export async function acceptMany(programme: string, kept: string, before: FormState, form: FormData): Promise<FormState> {
  const items = [...form].flatMap(([name, value]) => doubtOf(name, value) ?? []);
  const state = await submit(before, form, () => addRecord(programme, ['review', 'many'], { decision: 'accepted', note: text(form, 'note'), items }));
  if (state.isDone) redirect(backTo(programme, kept, items.length) as Route);
  return state;
}

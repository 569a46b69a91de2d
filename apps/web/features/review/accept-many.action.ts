'use server';

import { redirect } from 'next/navigation';
import type { Route } from 'next';
import type { FormState } from '../../lib/form-state.ts';
import { text } from '../../lib/form-values.ts';
import { pageOf } from '../../lib/page-address.ts';
import { addRecord } from '../../lib/records.ts';
import { submit } from '../../lib/submit.ts';
import { doubtIn } from './item-key.ts';

/** Accepts every doubt that is ticked, for one reason. */
export async function acceptMany(programme: string, code: string | undefined, before: FormState, form: FormData): Promise<FormState> {
  const items = form.getAll('doubts').flatMap((ticked) => (typeof ticked === 'string' ? doubtIn(ticked) : []));
  const state = await submit(before, form, () => addRecord(programme, ['review', 'many'], { decision: 'accepted', note: text(form, 'note'), items }));
  if (state.isDone) redirect(`${pageOf(programme, 'review')}?${new URLSearchParams({ ...(code ? { code } : {}), decided: String(items.length) })}` as Route);
  return state;
}

'use server';

import { redirect } from 'next/navigation';
import { exactPlaceSaid } from '../../lib/exact-place-said.ts';
import type { FormState } from '../../lib/form-state.ts';
import { text } from '../../lib/form-values.ts';
import { pageOf } from '../../lib/page-address.ts';
import { addRecord } from '../../lib/records.ts';
import { submit } from '../../lib/submit.ts';
import { donorTreeSaid } from './donor-tree-said.ts';

export async function addDonorTree(programme: string, before: FormState, form: FormData): Promise<FormState> {
  const id = text(form, 'id') ?? '';
  const state = await submit(before, form, () => addRecord(programme, ['donor-trees'], { id, ...donorTreeSaid(form), place: exactPlaceSaid(form, 'place/') }));
  if (state.isDone) redirect(pageOf(programme, 'donor-trees', id));
  return state;
}

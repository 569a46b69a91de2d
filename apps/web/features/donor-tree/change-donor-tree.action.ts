'use server';

import { redirect } from 'next/navigation';
import type { FormState } from '../../lib/form-state.ts';
import { pageOf } from '../../lib/page-address.ts';
import { changeRecord } from '../../lib/records.ts';
import { submit } from '../../lib/submit.ts';
import { donorTreeSaid } from './donor-tree-said.ts';

export async function changeDonorTree(programme: string, id: string, etag: string, before: FormState, form: FormData): Promise<FormState> {
  const state = await submit(before, form, () => changeRecord(programme, ['donor-trees', id], etag, donorTreeSaid(form)));
  if (state.isDone) redirect(pageOf(programme, 'donor-trees', id));
  return state;
}

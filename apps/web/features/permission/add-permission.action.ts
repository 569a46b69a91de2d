'use server';

import { redirect } from 'next/navigation';
import type { FormState } from '../../lib/form-state.ts';
import { text } from '../../lib/form-values.ts';
import { pageOf } from '../../lib/page-address.ts';
import { addRecord } from '../../lib/records.ts';
import { submit } from '../../lib/submit.ts';
import { permissionSaid } from './permission-said.ts';

export async function addPermission(programme: string, before: FormState, form: FormData): Promise<FormState> {
  const id = text(form, 'id') ?? '';
  const state = await submit(before, form, () => addRecord(programme, ['permissions'], { id, ...permissionSaid(form) }));
  if (state.isDone) redirect(pageOf(programme, 'permissions', id));
  return state;
}

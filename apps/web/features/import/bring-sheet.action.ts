'use server';

import { Import } from '@sprigline/contract';
import { redirect } from 'next/navigation';
import type { FormState } from '../../lib/form-state.ts';
import { text } from '../../lib/form-values.ts';
import { pageOf } from '../../lib/page-address.ts';
import { sendFile } from '../../lib/send-file.ts';
import { submit } from '../../lib/submit.ts';
import { apiOf } from '../../lib/workplace.ts';

/** Brings a sheet, to be read; nothing goes into the books. */
export async function bringSheet(programme: string, before: FormState, form: FormData): Promise<FormState> {
  const id = text(form, 'id') ?? '';
  const sheet = form.get('sheet');
  const file = sheet instanceof File ? sheet : new File([], 'nothing');
  const query = new URLSearchParams({ id, fileName: file.name || 'nothing' });
  const state = await submit(before, form, () => sendFile(`${apiOf(programme, 'imports')}?${query}`, Import, file));
  if (state.isDone) redirect(pageOf(programme, 'import', id));
  return state;
}

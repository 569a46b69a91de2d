'use server';

import { redirect } from 'next/navigation';
import type { Route } from 'next';
import type { FormState } from '../../lib/form-state.ts';
import { day, text } from '../../lib/form-values.ts';
import { pageOf } from '../../lib/page-address.ts';
import { addRecord } from '../../lib/records.ts';
import { submit } from '../../lib/submit.ts';

/** Writes how a donor tree was seen. */
export async function writeSighting(programme: string, treeId: string, before: FormState, form: FormData): Promise<FormState> {
  const body = { id: text(form, 'id'), seenOn: day(form, 'seenOn'), state: text(form, 'state'), note: text(form, 'note') };
  const state = await submit(before, form, () => addRecord(programme, ['donor-trees', treeId, 'sightings'], body));
  if (state.isDone) redirect(`${pageOf(programme, 'donor-trees', treeId)}#sightings` as Route);
  return state;
}

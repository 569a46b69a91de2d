'use server';

import { redirect } from 'next/navigation';
import type { Route } from 'next';
import type { FormState } from '../../lib/form-state.ts';
import { day, text } from '../../lib/form-values.ts';
import { pageOf } from '../../lib/page-address.ts';
import { addRecord } from '../../lib/records.ts';
import { submit } from '../../lib/submit.ts';

/** Says that two donor trees are one clone, or are not after all. */
export async function stateClone(programme: string, treeId: string, before: FormState, form: FormData): Promise<FormState> {
  const same = text(form, 'isSame');
  const body = {
    id: text(form, 'id'), otherTreeId: text(form, 'otherTreeId'), isSame: same === undefined ? undefined : same === 'yes', saidOn: day(form, 'saidOn'), evidence: text(form, 'evidence'),
  };
  const state = await submit(before, form, () => addRecord(programme, ['donor-trees', treeId, 'clone-statements'], body));
  if (state.isDone) redirect(`${pageOf(programme, 'donor-trees', treeId)}#clones` as Route);
  return state;
}

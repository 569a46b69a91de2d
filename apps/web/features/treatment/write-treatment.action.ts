'use server';

import type { Problem } from '@sprigline/contract';
import type { Route } from 'next';
import { redirect } from 'next/navigation';
import { derivedId } from '../../lib/derived-id.ts';
import { entrySaid, SAYING } from '../../lib/entry-said.ts';
import type { FormState } from '../../lib/form-state.ts';
import { isTicked, number, several, text } from '../../lib/form-values.ts';
import { writeTogether } from '../../lib/ledger.ts';
import { Refused } from '../../lib/refused.ts';
import { submit } from '../../lib/submit.ts';

/** What was treated when nothing is ticked: the place as a whole, or one batch. */
export type Treated = { readonly placeId: string } | { readonly batchId: string };

/** Writes what was done: of a place one entry, else one for each batch; all of them, or none. */
export async function writeTreatment(programme: string, treated: Treated, back: string, before: FormState, form: FormData): Promise<FormState> {
  const told = (name: string) => text(form, `${SAYING}${name}`);
  const done = {
    kind: 'treated', what: told('what'), product: told('product'), registration: told('registration'), rate: told('rate'), appliedBy: told('appliedBy'),
    reentryHours: number(form, `${SAYING}reentryHours`), reentry: told('reentry'),
  };
  const ticked = several(form, `${SAYING}batchIds`);
  const subjects: readonly Treated[] = ticked.length > 0 ? ticked.map((batchId) => ({ batchId })) : [treated];
  const entries = subjects.map((subject) => {
    const entry = entrySaid(form, { ...done, ...subject });
    // Ids follow from the form's own and from what was treated, so that sending again writes nothing twice.
    return { ...entry, id: derivedId('treated', entry.id, ...Object.values(subject)) };
  });
  const state = await submit(before, form, async () => {
    try {
      await writeTogether(programme, entries, isTicked(form, 'confirm'));
    } catch (error) {
      throw error instanceof Refused ? new Refused(atTheFirst(error.problem)) : error;
    }
  });
  if (state.isDone) redirect(back as Route);
  return state;
}

/** What is wrong with one is wrong with all: they say the same of different batches. */
function atTheFirst(problem: Problem): Problem {
  const errors = new Map(problem.errors?.map(({ pointer, detail }) => [pointer.replace(/^#\/entries\/\d+\//, '#/entries/0/'), detail]));
  return errors.size === 0 ? problem : { ...problem, errors: [...errors].map(([pointer, detail]) => ({ pointer, detail })) };
}

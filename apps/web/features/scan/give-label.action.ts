'use server';

import { Label } from '@sprigline/contract';
import { getTranslations } from 'next-intl/server';
import type { Route } from 'next';
import { redirect } from 'next/navigation';
import { ask } from '../../lib/api.ts';
import type { FormState } from '../../lib/form-state.ts';
import { text } from '../../lib/form-values.ts';
import { pageOf } from '../../lib/page-address.ts';
import { Refused } from '../../lib/refused.ts';
import { submit } from '../../lib/submit.ts';
import { wordsFor } from '../../lib/words-for.ts';
import { apiOf } from '../../lib/workplace.ts';
import type { LabelFound } from './find-label.action.ts';

const PAGE_OF = { batchId: 'batches', donorTreeId: 'donor-trees', placeId: 'places' } as const;
export type LabelledField = keyof typeof PAGE_OF;

/** Says what a label is on, out of a form that has one field for it, and shows that thing. */
export async function giveLabel(programme: string, code: string, field: LabelledField, before: FormState, form: FormData): Promise<FormState> {
  const id = text(form, field);
  const state = await submit(before, form, async () => {
    if (id === undefined) throw await notChosen(field);
    await ask(apiOf(programme, 'labels'), Label, { method: 'POST', body: { code, [field]: id } });
  });
  if (state.isDone && id !== undefined) redirect(pageOf(programme, PAGE_OF[field], id) as Route);
  return state;
}

/** Puts a scanned label on a batch, beside those that it has. */
export async function relabel(programme: string, batchId: string, code: string): Promise<LabelFound> {
  try {
    await ask(apiOf(programme, 'labels'), Label, { method: 'POST', body: { code, batchId } });
  } catch (error) {
    if (!(error instanceof Refused)) throw error;
    return { isTaken: false, words: await wordsFor(error.problem) };
  }
  return { isTaken: true, words: (await getTranslations('scan.relabel'))('done'), href: pageOf(programme, 'batches', batchId) };
}

async function notChosen(field: LabelledField): Promise<Refused> {
  const words = (await getTranslations('scan.claim'))('notChosen');
  return new Refused({ type: 'about:blank', title: words, detail: words, status: 422, errors: [{ pointer: `#/${field}`, detail: words }] });
}

'use server';

import { Batch, type Problem } from '@sprigline/contract';
import { sortingSum } from '@sprigline/domain';
import { getTranslations } from 'next-intl/server';
import { redirect } from 'next/navigation';
import { ask } from '../../lib/api.ts';
import { SAYING, type UncheckedEntry } from '../../lib/entry-said.ts';
import type { FormState } from '../../lib/form-state.ts';
import { isTicked, text } from '../../lib/form-values.ts';
import { writeTogether } from '../../lib/ledger.ts';
import { pageOf } from '../../lib/page-address.ts';
import { Refused, RefusedPart } from '../../lib/refused.ts';
import { submit } from '../../lib/submit.ts';
import { wordsFor } from '../../lib/words-for.ts';
import { apiOf } from '../../lib/workplace.ts';
import { minuteOf, notCounts, sortField, sortingOf, sortSaid } from './sort-said.ts';

/** Writes the sorting of a tray: all of it, or nothing. */
export async function sortTray(programme: string, batchId: string, before: FormState, form: FormData): Promise<FormState> {
  const state = await submit(before, form, async () => {
    const { body: batch } = await ask(apiOf(programme, 'batches', batchId), Batch);
    await refuseUnlessClear(batch, form);
    const entries = sortSaid(batchId, batch.stage === 'cutting', form);
    try {
      await writeTogether(programme, entries, isTicked(form, 'confirm'));
    } catch (error) {
      throw error instanceof Refused ? new Refused(await atItsField(error, entries)) : error;
    }
  });
  if (state.isDone) redirect(`${pageOf(programme, 'batches', batchId)}#history`);
  return state;
}

/** What the page itself has to ask before anything is sent: does it add up, and if not, did somebody look? */
async function refuseUnlessClear(batch: Batch, form: FormData): Promise<void> {
  const broken = notCounts(form);
  if (broken.length > 0) throw unfit(broken.map((name) => [name, 'expected number']));

  const t = await getTranslations('sorting');
  const sorting = sortingOf(form);
  const { told, unaccounted, over } = sortingSum(sorting);
  if (told === 0) throw refusal(t('nothingTold'));
  if (text(form, 'time') !== undefined && minuteOf(text(form, 'time')) === undefined) throw unfit([['time', t('whichTime')]], '');
  // Sent a second time after a lost answer, it is in the books already.
  const isWritten = batch.history.some(({ id }) => id === text(form, 'ids/counted'));
  if (!isWritten && batch.balance !== sorting.inBooks) throw refusal(t('changedMeanwhile', { there: batch.balance, inBooks: sorting.inBooks }));
  if (sorting.thrownOut > 0 && !text(form, `${SAYING}thrownReason`)) throw unfit([['thrownReason', 'received undefined']]);
  if (over > 0 && !text(form, `${SAYING}foundReason`)) throw unfit([['foundReason', t('over', { n: over })]]);
  if (unaccounted > 0 && !isTicked(form, `${SAYING}missing`)) throw unfit([['missing', t('unaccounted', { n: unaccounted })]]);
}

const refusal = (words: string): Refused => new Refused({ type: 'about:blank', title: words, detail: words, status: 409 });

const unfit = (faults: readonly (readonly [string, string])[], prefix = SAYING): Refused =>
  new Refused({ type: '/problems/http/unfit-request', title: '', status: 422, errors: faults.map(([name, detail]) => ({ pointer: `#/${prefix}${name}`, detail })) });

/** The API speaks of entries; the form has a field for every heap. */
async function atItsField(error: Refused, entries: readonly UncheckedEntry[]): Promise<Problem> {
  const kindAt = (index: number): string => (entries[index]?.saying as { kind?: string } | undefined)?.kind ?? '';
  if (error instanceof RefusedPart) {
    const field = error.problem.type.endsWith('label-taken') ? 'label' : 'n';
    return { ...error.problem, errors: [{ pointer: `#/${SAYING}${sortField(kindAt(error.at), field)}`, detail: await wordsFor(error.problem) }] };
  }
  const errors = error.problem.errors?.map(({ pointer, detail }) => {
    const [, index, field = ''] = /^#\/entries\/(\d+)\/saying\/(.*)$/.exec(pointer) ?? [];
    return { pointer: index === undefined ? pointer.replace(/^#\/entries\/\d+\//, '#/entries/0/') : `#/${SAYING}${sortField(kindAt(Number(index)), field)}`, detail };
  });
  return errors ? { ...error.problem, errors } : error.problem;
}

'use server';

import { Batch } from '@sprigline/contract';
import { getTranslations } from 'next-intl/server';
import { redirect } from 'next/navigation';
import { batchWithLabel } from '../../lib/batch-with-label.ts';
import { entrySaid, SAYING } from '../../lib/entry-said.ts';
import type { FormState } from '../../lib/form-state.ts';
import { isTicked, number, text } from '../../lib/form-values.ts';
import { writeEntry } from '../../lib/ledger.ts';
import { pageOf } from '../../lib/page-address.ts';
import { readIfAllowed } from '../../lib/read-if-allowed.ts';
import { Refused } from '../../lib/refused.ts';
import { submit } from '../../lib/submit.ts';
import { apiOf } from '../../lib/workplace.ts';

/** Plants that came in at a stage: opening stock, a return, from a partner, bought. */
export async function bringIn(programme: string, before: FormState, form: FormData): Promise<FormState> {
  const words = (name: string) => text(form, `${SAYING}${name}`);
  const batchId = words('batchId') ?? '';
  // Which donor trees they may be of, while nobody knows which.
  const candidates = words('donorTreeId') ? [] : [...form.keys()].flatMap((name) => (name.startsWith('candidates/') ? [name.slice('candidates/'.length)] : []));
  const saying = {
    kind: 'received', batchId, stickingId: words('stickingId'), ...(candidates.length > 0 ? { candidates } : {}), stage: words('stage'), n: number(form, `${SAYING}n`), source: words('source'),
    donorTreeId: words('donorTreeId'), taxonId: words('taxonId'), stuckOn: words('stuckOn'), rooted: number(form, `${SAYING}rooted`), placeId: words('placeId'),
    label: words('label'), rows: words('rows'), container: words('container'), medium: words('medium'),
  };
  const state = await submit(before, form, async () => {
    const returned = await returnedOf(programme, text(form, 'cameFrom'));
    await writeEntry(programme, entrySaid(form, { ...saying, ...returned }), isTicked(form, 'confirm'));
  });
  if (state.isDone) redirect(pageOf(programme, 'batches', batchId));
  return state;
}

/** Plants that come back are of the sticking that they went from: then the donor tree and the species need no telling. */
async function returnedOf(programme: string, label: string | undefined): Promise<object> {
  if (label === undefined) return {};
  const t = await getTranslations('sticking.opening');
  const found = await batchWithLabel(programme, label);
  const batch = found === undefined ? undefined : (await readIfAllowed(apiOf(programme, 'batches', found), Batch));
  const sticking = batch?.body.line.sticking;
  const words = found ? t('cameFromMixed') : t('noSuchLabel');
  if (!sticking) throw new Refused({ type: 'about:blank', title: words, detail: words, status: 422, errors: [{ pointer: '#/cameFrom', detail: words }] });
  return { stickingId: sticking.id, donorTreeId: undefined, candidates: undefined };
}

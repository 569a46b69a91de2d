'use server';

import { getTranslations } from 'next-intl/server';
import { redirect } from 'next/navigation';
import type { Route } from 'next';
import { batchWithLabel } from '../../lib/batch-with-label.ts';
import { entrySaid, SAYING } from '../../lib/entry-said.ts';
import type { FormState } from '../../lib/form-state.ts';
import { isTicked, text } from '../../lib/form-values.ts';
import { writeEntry } from '../../lib/ledger.ts';
import { pageOf } from '../../lib/page-address.ts';
import { Refused } from '../../lib/refused.ts';
import { submit } from '../../lib/submit.ts';

const told = (form: FormData, name: string) => text(form, `${SAYING}${name}`);
const reasons = (form: FormData) => ({ reason: told(form, 'reason'), sample: told(form, 'sample'), result: told(form, 'result') });

/** Holds one thing: a batch by its label, a place, a donor tree, a trip or a lot of medium. */
export async function writeHold(programme: string, before: FormState, form: FormData): Promise<FormState> {
  const state = await submit(before, form, async () => {
    const t = await getTranslations('holds');
    const named = ['label', 'placeId', 'donorTreeId', 'tripId', 'mediumLot'].filter((name) => told(form, name) !== undefined);
    if (named.length !== 1) throw unfit('label', t('oneOnly'));
    const label = told(form, 'label');
    const batchId = label === undefined ? undefined : await batchWithLabel(programme, label);
    if (label !== undefined && batchId === undefined) throw unfit('label', t('noSuchLabel'));
    const saying = { kind: 'held', batchId, placeId: told(form, 'placeId'), donorTreeId: told(form, 'donorTreeId'), tripId: told(form, 'tripId'), mediumLot: told(form, 'mediumLot'), ...reasons(form) };
    await writeEntry(programme, entrySaid(form, saying), isTicked(form, 'confirm'));
  });
  if (state.isDone) redirect(pageOf(programme, 'holds') as Route);
  return state;
}

/** Releases what one entry held. @param subject as the hold named it, such as `{ placeId }` */
export async function writeRelease(programme: string, subject: object, before: FormState, form: FormData): Promise<FormState> {
  const state = await submit(before, form, () => writeEntry(programme, entrySaid(form, { kind: 'released', ...subject, ...reasons(form) }), isTicked(form, 'confirm')));
  if (state.isDone) redirect(pageOf(programme, 'holds') as Route);
  return state;
}

const unfit = (field: string, detail: string): Refused =>
  new Refused({ type: 'about:blank', title: detail, detail, status: 422, errors: [{ pointer: `#/${SAYING}${field}`, detail }] });

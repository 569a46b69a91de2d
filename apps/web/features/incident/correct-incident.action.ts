'use server';

import type { IncidentShown } from '@sprigline/contract';
import { getTranslations } from 'next-intl/server';
import { redirect } from 'next/navigation';
import { entrySaid, SAYING } from '../../lib/entry-said.ts';
import type { FormState } from '../../lib/form-state.ts';
import { day, isTicked, number, text } from '../../lib/form-values.ts';
import { writeEntry } from '../../lib/ledger.ts';
import { pageOf } from '../../lib/page-address.ts';
import { Refused } from '../../lib/refused.ts';
import { submit } from '../../lib/submit.ts';
import { incidentSaid } from './incident-said.ts';

export interface Target {
  readonly programme: string;
  /** The page that the person came from. */
  readonly placeId: string;
  /** As the person saw it. */
  readonly was: IncidentShown;
}

/** It is right again: the same words, with an end. */
export async function endIncident(target: Target, before: FormState, form: FormData): Promise<FormState> {
  const { what, severity, from, observedOn, detail, placeId } = target.was;
  const saying = {
    kind: 'incident', placeId, what, severity, detail: detail ?? undefined, lastGoodOn: from === observedOn ? undefined : from,
    untilDay: day(form, `${SAYING}untilDay`),
  };
  const t = await getTranslations('incidents');
  return correct(target, { kind: 'replaced', instead: { observedOn, saying }, reason: t('overReason') }, before, form);
}

/** Other words in the place of what was written. */
export async function mendIncident(target: Target, before: FormState, form: FormData): Promise<FormState> {
  const { observedOn } = entrySaid(form, {});
  return correct(target, { kind: 'replaced', instead: { observedOn, saying: incidentSaid(target.was.placeId, form) }, reason: text(form, 'reason') }, before, form);
}

/** It never happened. */
export async function withdrawIncident(target: Target, before: FormState, form: FormData): Promise<FormState> {
  return correct(target, { kind: 'withdrawn', reason: text(form, 'reason') }, before, form);
}

async function correct({ programme, placeId, was }: Target, saying: object, before: FormState, form: FormData): Promise<FormState> {
  const around = entrySaid(form, { ...saying, entryId: was.entryId, sawVersion: was.latestVersionId });
  // A correction is made today, whatever day it speaks of.
  const entry = { ...around, observedOn: text(form, 'madeOn'), minute: number(form, 'minute') };
  const state = await submit(before, form, async () => {
    try {
      await writeEntry(programme, entry, isTicked(form, 'confirm'));
    } catch (error) {
      throw error instanceof Refused ? atItsField(error) : error;
    }
  });
  if (state.isDone) redirect(`${pageOf(programme, 'places', placeId)}#incidents`);
  return state;
}

/** The API speaks of what is put instead; the form has the fields of the incident itself. */
function atItsField({ problem }: Refused): Refused {
  const errors = problem.errors?.map(({ pointer, detail }) => ({
    pointer: pointer.replace('/saying/instead/saying/', '/saying/').replace('/saying/instead/', '/').replace('#/entries/0/saying/reason', '#/reason'), detail,
  }));
  return new Refused(errors ? { ...problem, errors } : problem);
}

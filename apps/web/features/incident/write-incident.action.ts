'use server';

import { redirect } from 'next/navigation';
import { entrySaid } from '../../lib/entry-said.ts';
import type { FormState } from '../../lib/form-state.ts';
import { isTicked } from '../../lib/form-values.ts';
import { writeEntry } from '../../lib/ledger.ts';
import { pageOf } from '../../lib/page-address.ts';
import { submit } from '../../lib/submit.ts';
import { incidentSaid } from './incident-said.ts';

/** Something went wrong at a place. */
export async function writeIncident(programme: string, placeId: string, before: FormState, form: FormData): Promise<FormState> {
  const state = await submit(before, form, () => writeEntry(programme, entrySaid(form, incidentSaid(placeId, form)), isTicked(form, 'confirm')));
  if (state.isDone) redirect(`${pageOf(programme, 'places', placeId)}#incidents`);
  return state;
}

'use server';

import type { Problem } from '@sprigline/contract';
import { redirect } from 'next/navigation';
import type { Route } from 'next';
import type { FormState } from '../../lib/form-state.ts';
import { isTicked, text } from '../../lib/form-values.ts';
import { lineField } from '../../lib/line-field.ts';
import { writeLines } from '../../lib/lines.ts';
import { pageOf } from '../../lib/page-address.ts';
import { Refused } from '../../lib/refused.ts';
import { submit } from '../../lib/submit.ts';
import { traySaid } from './tray-said.ts';

/** Fields that all lines of the tray have in common. */
const OF_THE_TRAY = ['placeId', 'recipeVersionId', 'observedOn', 'medium', 'wood', 'note'];

/** Writes a tray's fill, line by line: a refused line does not keep the others out, and none is written twice. */
export async function stickTray(programme: string, tripId: string, lines: number, before: FormState, form: FormData): Promise<FormState> {
  const said = traySaid(form, lines);
  const state = await submit(before, form, async () => {
    if (said.length === 0) throw new Refused({ type: '/problems/http/unfit-request', title: '', status: 422, errors: [{ pointer: `#/${lineField(0, 'n')}`, detail: 'received undefined' }] });
    await writeLines(programme, said, isTicked(form, 'confirm'), fieldOf, OF_THE_TRAY);
  });
  if (state.isDone) redirect(`${pageOf(programme, 'stick')}?tripId=${tripId}&stuck=${said.length}&sent=${said[0]?.entry.id}&trayId=${text(form, 'placeId')}` as Route);
  return state;
}

const fieldOf = ({ type }: Problem): string => (type.endsWith('label-taken') ? 'label' : 'n');

'use server';

import { redirect } from 'next/navigation';
import type { Route } from 'next';
import { z } from 'zod';
import { ask } from '../../lib/api.ts';
import type { FormState } from '../../lib/form-state.ts';
import { number, text } from '../../lib/form-values.ts';
import { pageOf } from '../../lib/page-address.ts';
import { submit } from '../../lib/submit.ts';
import { apiOf } from '../../lib/workplace.ts';

/** Says where a tray lies in its portrait. */
export async function frameTray(programme: string, placeId: string, photoId: string, before: FormState, form: FormData): Promise<FormState> {
  const body = { left: number(form, 'left'), top: number(form, 'top'), right: number(form, 'right'), bottom: number(form, 'bottom'), labelSide: text(form, 'labelSide') };
  const state = await submit(before, form, () => ask(apiOf(programme, 'photos', photoId, 'frame'), z.unknown(), { method: 'PUT', body }));
  if (state.isDone) redirect(`${pageOf(programme, 'places', placeId)}?framed=yes` as Route);
  return state;
}

'use server';

import { MadeLink } from '@sprigline/contract';
import { revalidatePath } from 'next/cache';
import { z } from 'zod';
import { ask } from '../../lib/api.ts';
import type { FormState } from '../../lib/form-state.ts';
import { number, text } from '../../lib/form-values.ts';
import { pageOf } from '../../lib/page-address.ts';
import { submit } from '../../lib/submit.ts';
import { apiOf } from '../../lib/workplace.ts';

/** A link for people outside; shown this once. */
export async function sharePlan(programme: string, id: string, before: FormState, form: FormData): Promise<FormState> {
  const body = { id: text(form, 'id'), forName: text(form, 'forName'), days: number(form, 'days') };
  let made = '';
  const state = await submit(before, form, async () => {
    made = (await ask(apiOf(programme, 'plans', id, 'shares'), MadeLink, { method: 'POST', body })).body.link;
  });
  if (!state.isDone) return state;
  revalidatePath(pageOf(programme, 'plans', id));
  return { ...state, made };
}

export async function revokeShare(programme: string, id: string, shareId: string, before: FormState, form: FormData): Promise<FormState> {
  return remove(programme, id, ['shares', shareId], before, form);
}

export async function removeTarget(programme: string, id: string, targetId: string, before: FormState, form: FormData): Promise<FormState> {
  return remove(programme, id, ['targets', targetId], before, form);
}

async function remove(programme: string, id: string, part: readonly string[], before: FormState, form: FormData): Promise<FormState> {
  const state = await submit(before, form, () => ask(apiOf(programme, 'plans', id, ...part), z.unknown(), { method: 'DELETE' }));
  if (state.isDone) revalidatePath(pageOf(programme, 'plans', id));
  return state;
}

'use server';

import { redirect } from 'next/navigation';
import { z } from 'zod';
import { ask } from '../../lib/api.ts';
import type { FormState } from '../../lib/form-state.ts';
import { pageOf } from '../../lib/page-address.ts';
import { submit } from '../../lib/submit.ts';
import { apiOf } from '../../lib/workplace.ts';

/** Effective from their very next request; what they wrote stays. */
export async function removePerson(programme: string, id: string, before: FormState, form: FormData): Promise<FormState> {
  const state = await submit(before, form, () => ask(apiOf(programme, 'people', id), z.unknown(), { method: 'DELETE' }));
  if (state.isDone) redirect(pageOf(programme, 'people'));
  return state;
}

'use server';

import { revalidatePath } from 'next/cache';
import { z } from 'zod';
import { ask } from '../../lib/api.ts';
import type { FormState } from '../../lib/form-state.ts';
import { pageOf } from '../../lib/page-address.ts';
import { submit } from '../../lib/submit.ts';
import { apiOf } from '../../lib/workplace.ts';

export async function revokeKey(programme: string, id: string, before: FormState, form: FormData): Promise<FormState> {
  const state = await submit(before, form, () => ask(apiOf(programme, 'keys', id), z.unknown(), { method: 'DELETE' }));
  if (state.isDone) revalidatePath(pageOf(programme, 'keys'));
  return state;
}

'use server';

import { revalidatePath } from 'next/cache';
import type { FormState } from '../../lib/form-state.ts';
import { text } from '../../lib/form-values.ts';
import { pageOf } from '../../lib/page-address.ts';
import { addRecord } from '../../lib/records.ts';
import { submit } from '../../lib/submit.ts';

export async function answerQuestion(programme: string, questionId: string, id: string, before: FormState, form: FormData): Promise<FormState> {
  const state = await submit(before, form, () => addRecord(programme, ['questions', questionId, 'answer'], { id, answer: text(form, 'answer') }));
  if (state.isDone) revalidatePath(pageOf(programme));
  return state;
}

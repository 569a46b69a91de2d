'use server';

import { redirect } from 'next/navigation';
import type { FormState } from '../../lib/form-state.ts';
import { text } from '../../lib/form-values.ts';
import { pageOf } from '../../lib/page-address.ts';
import { addRecord } from '../../lib/records.ts';
import { submit } from '../../lib/submit.ts';
import type { PhotoSubject } from './subject.ts';

/** Removes a photo for good; that it was done, by whom and why, is kept. */
export async function takeDown(programme: string, { noun, id }: PhotoSubject, photoId: string, before: FormState, form: FormData): Promise<FormState> {
  const state = await submit(before, form, () => addRecord(programme, ['photos', photoId, 'withdrawal'], { reason: text(form, 'reason') }));
  if (state.isDone) redirect(`${pageOf(programme, noun, id)}#pictures`);
  return state;
}

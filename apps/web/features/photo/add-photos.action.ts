'use server';

import { Photo } from '@sprigline/contract';
import { getTranslations } from 'next-intl/server';
import { revalidatePath } from 'next/cache';
import type { FormState } from '../../lib/form-state.ts';
import { writeEntry } from '../../lib/ledger.ts';
import { pageOf } from '../../lib/page-address.ts';
import { Refused } from '../../lib/refused.ts';
import { sendFile } from '../../lib/send-file.ts';
import { submit } from '../../lib/submit.ts';
import { apiOf } from '../../lib/workplace.ts';
import { photosSaid } from './photos-said.ts';
import type { PhotoSubject } from './subject.ts';

/** Sends the photos of a form, one after the other; the note that they share goes first. Sent again, nothing is kept twice. */
export async function addPhotos(programme: string, subject: PhotoSubject, before: FormState, form: FormData): Promise<FormState> {
  const { note, photos } = photosSaid(form, subject);
  const state = await submit(before, form, async () => {
    if (photos.length === 0) throw new Refused(await noPhoto());
    if (note) await writeEntry(programme, note, false);
    for (const { id, query, file } of photos) await sendFile(`${apiOf(programme, 'photos', id)}?${query}`, Photo, file, 'PUT');
  });
  if (state.isDone) revalidatePath(pageOf(programme, subject.noun, subject.id));
  return state;
}

async function noPhoto() {
  const t = await getTranslations('photos');
  const detail = t('faults.none');
  return { type: '/problems/http/unfit-request', title: detail, status: 422, errors: [{ pointer: '#/photos', detail }] };
}

'use client';

import { useRef, useState } from 'react';
import { UNTOUCHED } from '../../lib/form-state.ts';
import { newId } from '../../lib/new-id.ts';
import { shrinkPicture } from '../../lib/picture/shrink-picture.ts';
import { type PictureFault, UnreadablePicture } from '../../lib/picture/unreadable-picture.ts';
import { addPhotos } from './add-photos.action.ts';
import type { PhotoSubject } from './subject.ts';

export type SendingState = 'waiting' | 'making' | 'sending' | 'kept' | 'refused';

/** A chosen file on its way. Its id stays through every try, so that a lost answer keeps nothing twice. */
export interface Sending {
  readonly id: string;
  readonly file: File;
  /** Once it was made smaller. */
  readonly small?: File;
  readonly state: SendingState;
  readonly fault?: PictureFault | 'unheard' | undefined;
  /** What the API says against it. */
  readonly words?: string | undefined;
}

export function useSendings(programme: string, subject: PhotoSubject) {
  const [sendings, set] = useState<readonly Sending[]>([]);
  const note = useRef({ text: '', id: '', writtenAt: '' });
  const update = (id: string, now: Partial<Sending>) => set((all) => all.map((one) => (one.id === id ? { ...one, ...now } : one)));

  /** The note is one for as long as it reads the same. */
  function toldBy(form: HTMLFormElement, { id }: Sending, small: File): FormData {
    const told = new FormData(form);
    const text = String(told.get('text') ?? '').trim();
    if (note.current.id === '' || note.current.text !== text) note.current = { text, id: newId(), writtenAt: new Date().toISOString() };
    told.set('id', id);
    told.set('noteId', note.current.id);
    told.set('writtenAt', note.current.writtenAt);
    told.delete('photos');
    told.append('photos', small);
    return told;
  }

  async function send(form: HTMLFormElement, one: Sending): Promise<void> {
    try {
      update(one.id, { state: 'making', ...CLEAN });
      const small = one.small ?? (await smallOf(one.file));
      update(one.id, { state: 'sending', small });
      const { isDone = false, words } = await addPhotos(programme, subject, UNTOUCHED, toldBy(form, one, small));
      update(one.id, isDone ? { state: 'kept' } : { state: 'refused', words });
    } catch (error) {
      update(one.id, { state: 'refused', fault: error instanceof UnreadablePicture ? error.fault : 'unheard' });
    }
  }

  return {
    sendings,
    /** Those that are kept already make room. */
    add: (files: readonly File[]): readonly Sending[] => {
      const added = files.map((file): Sending => ({ id: newId(), file, state: 'waiting' }));
      set((all) => [...all.filter(({ state }) => state !== 'kept'), ...added]);
      return added;
    },
    leaveOut: (id: string) => set((all) => all.filter((one) => one.id !== id)),
    /** One after the other: a phone has room to unpack a single large picture. */
    async sendAll(form: HTMLFormElement, added: readonly Sending[]): Promise<void> {
      for (const one of [...sendings, ...added]) if (one.state === 'waiting' || one.state === 'refused') await send(form, one);
    },
  };
}

const CLEAN = { fault: undefined, words: undefined };

async function smallOf(file: File): Promise<File> {
  const { blob } = await shrinkPicture(file);
  return new File([blob], 'photo.jpg', { type: blob.type });
}

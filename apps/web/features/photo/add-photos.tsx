'use client';

import { useTranslations } from 'next-intl';
import { type ReactNode, useActionState, useMemo, useState } from 'react';
import { UNTOUCHED } from '../../lib/form-state.ts';
import { buttonClass } from '../../ui/button-class.ts';
import { ErrorSummary } from '../../ui/form/error-summary.tsx';
import { fieldErrors } from '../../ui/form/field-errors.ts';
import { FormContext, type FormTalk } from '../../ui/form/form-context.ts';
import { HiddenField } from '../../ui/form/hidden-field.tsx';
import { addPhotos } from './add-photos.action.ts';
import { PictureInputs } from './picture-inputs.tsx';
import { SendingList } from './sending-list.tsx';
import { useSendings } from './sendings.ts';
import type { PhotoSubject } from './subject.ts';

interface AddPhotosProps {
  readonly programme: string;
  readonly subject: PhotoSubject;
  readonly labels: Readonly<Record<string, string>>;
  /** Made with the page, for a form that is sent without script. */
  readonly made: { readonly id: string; readonly noteId: string; readonly writtenAt: string };
  /** The fields that all photos share. */
  readonly children: ReactNode;
}

/**
 * Sends photos one by one, each made smaller on this device first. Without script it is a plain form, which sends them as
 * they are; then they are made smaller where they arrive.
 */
export function AddPhotos({ programme, subject, labels, made, children }: AddPhotosProps) {
  const [state, sendForm] = useActionState(addPhotos.bind(null, programme, subject), UNTOUCHED);
  const [t, ui] = [useTranslations('photos'), useTranslations('ui')];
  const { sendings, add, leaveOut, sendAll } = useSendings(programme, subject);
  const [isSending, setSending] = useState(false);
  const [isEmpty, setEmpty] = useState(false);
  const talk = useMemo<FormTalk>(
    () => ({ turn: state.turn, values: state.values, problem: state.problem, words: state.words, labels, errors: fieldErrors(state.problem, labels, { needsAnAnswer: ui('needsAnAnswer'), mustBeANumber: ui('mustBeANumber') }) }),
    [state, labels, ui],
  );
  const toSend = sendings.filter(({ state: now }) => now !== 'kept').length;

  async function sendHere(form: HTMLFormElement) {
    // Chosen before the script was there.
    const early = new FormData(form).getAll('photos').filter((file): file is File => file instanceof File && file.size > 0);
    setEmpty(toSend + early.length === 0);
    setSending(true);
    await sendAll(form, early.length > 0 ? add(early) : []);
    setSending(false);
  }

  return (
    <FormContext value={talk}>
      <form
        action={sendForm}
        className="mt-4 grid grid-cols-[minmax(0,1fr)] justify-items-start gap-6"
        noValidate
        onSubmit={(event) => {
          event.preventDefault();
          if (!isSending) void sendHere(event.currentTarget);
        }}
      >
        {state.problem && <ErrorSummary key={state.turn} />}
        <HiddenField name="id" value={made.id} />
        <HiddenField name="noteId" value={made.noteId} />
        <HiddenField name="writtenAt" value={made.writtenAt} />
        <PictureInputs onChosen={(files) => { setEmpty(false); add(files); }} />
        <noscript>{t('noScript')}</noscript>
        {children}
        <SendingList sendings={sendings} leaveOut={leaveOut} />
        {isEmpty && <p role="alert" className="font-semibold text-rust">{t('faults.none')}</p>}
        <button className={buttonClass()} aria-disabled={isSending}>{isSending ? ui('working') : t('send', { n: toSend })}</button>
      </form>
    </FormContext>
  );
}

'use client';

import { useTranslations } from 'next-intl';
import { type ReactNode, useActionState, useMemo } from 'react';
import { type FormAction, UNTOUCHED } from '../../lib/form-state.ts';
import { MadeOnce } from './made-once.tsx';
import { ErrorSummary } from './error-summary.tsx';
import { fieldErrors } from './field-errors.ts';
import { FormContext, type FormTalk } from './form-context.ts';
import { SendButton } from './send-button.tsx';

interface ActionFormProps {
  readonly action: FormAction;
  /** What each field is called, by its name; names follow the API's body, such as `exactPlace/latitude`. */
  readonly labels?: Readonly<Record<string, string>>;
  /** Words on the button. */
  readonly send: string;
  readonly look?: 'main' | 'quiet' | 'grave';
  /** Said once the action has made something to hand on, above it. */
  readonly madeWords?: string;
  readonly children?: ReactNode;
}

/**
 * A form around a server action. Works before its script has loaded, and without it.
 * Shows the summary of errors above its fields and keeps what was typed.
 */
export function ActionForm({ action, labels = {}, send, look = 'main', madeWords, children }: ActionFormProps) {
  const [state, sendForm] = useActionState(action, UNTOUCHED);
  const t = useTranslations('ui');
  const talk = useMemo<FormTalk>(
    () => ({ turn: state.turn, values: state.values, problem: state.problem, words: state.words, labels, errors: fieldErrors(state.problem, labels, { needsAnAnswer: t('needsAnAnswer'), mustBeANumber: t('mustBeANumber') }) }),
    [state, labels, t],
  );

  return (
    <FormContext value={talk}>
      <form action={sendForm} className="grid justify-items-start gap-6" noValidate>
        {state.problem && <ErrorSummary key={state.turn} />}
        {children}
        <SendButton look={look}>{send}</SendButton>
        {/* Always there, so that what appears in it is read out. */}
        <div role="status" className="empty:hidden">
          {state.made ? <MadeOnce words={madeWords ?? t('saved')} made={state.made} madeFor={state.madeFor} /> : state.isDone ? <p className="font-semibold">{t('saved')}</p> : null}
        </div>
      </form>
    </FormContext>
  );
}

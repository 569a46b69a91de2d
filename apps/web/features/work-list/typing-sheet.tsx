'use client';

import { useTranslations } from 'next-intl';
import { useActionState, useMemo, useRef } from 'react';
import { buttonClass } from '../../ui/button-class.ts';
import { ErrorSummary } from '../../ui/form/error-summary.tsx';
import { fieldErrors } from '../../ui/form/field-errors.ts';
import { FormContext, type FormTalk } from '../../ui/form/form-context.ts';
import { SendButton } from '../../ui/form/send-button.tsx';
import { enterMovesDown } from './enter-moves-down.ts';
import { typedFields } from './typed-fields.ts';
import { TypingHead, type TypingHeadProps } from './typing-head.tsx';
import { type LineToType, TypingLine } from './typing-line.tsx';
import { NOTHING_SENT, type TypingState } from './typing-state.ts';
import { useKeptSheet } from './use-kept-sheet.ts';

interface TypingSheetProps extends TypingHeadProps {
  readonly programme: string;
  /** Under which name this device keeps what is typed. */
  readonly keptAs: string;
  readonly action: (before: TypingState, form: FormData) => Promise<TypingState>;
  readonly lines: readonly LineToType[];
}

/** A printed sheet typed back in its own order. Works without script; with it, nothing typed is lost and Enter moves down. */
export function TypingSheet({ programme, keptAs, action, lines, ...head }: TypingSheetProps) {
  const [state, send] = useActionState(action, NOTHING_SENT);
  const t = useTranslations('workLists.type');
  const ui = useTranslations('ui');
  const form = useRef<HTMLFormElement>(null);
  const { isRestored, isKept, keep, throwAway } = useKeptSheet(keptAs, form, state.turn);
  const talk = useMemo<FormTalk>(() => {
    const names = ['observedOn', 'seenBy', 'workdayId', 'look', 'placeId', 'container'] as const;
    const labels = Object.fromEntries(names.map((name) => [name, t(`fields.${name}`)]));
    return { turn: state.turn, values: state.values, problem: state.problem, words: state.words, labels, errors: fieldErrors(state.problem, labels, { needsAnAnswer: ui('needsAnAnswer'), mustBeANumber: ui('mustBeANumber') }) };
  }, [state, t, ui]);
  const left = lines.filter(({ typed, number }) => typed === null && state.refused[number] !== undefined);

  return (
    <FormContext value={talk}>
      <form ref={form} action={send} onInput={keep} onKeyDown={enterMovesDown} className="grid gap-6" noValidate>
        {state.problem && <ErrorSummary key={state.turn} />}
        {!isKept && <p role="alert" className="rounded-md border-2 border-rust bg-rust-wash p-3 font-semibold text-rust">{t('notKept')}</p>}
        {isRestored && state.turn === 0 && (
          <div className="flex flex-wrap items-center gap-3 rounded-md border-2 border-line-strong bg-lichen p-3 text-on-lichen">
            <p role="status">{t('kept')}</p>
            <button type="button" onClick={throwAway} className={buttonClass('quiet')}>{t('throwAway')}</button>
          </div>
        )}
        <TypingHead {...head} />
        <datalist id="places">{head.places.map(({ value, words }) => <option key={value} value={words} />)}</datalist>
        <ol className="border-t-2 border-line-strong">
          {lines.map((line) => <TypingLine key={line.number} programme={programme} line={line} fields={typedFields(head.kind)} state={state} />)}
        </ol>
        <div role="status" className="font-semibold empty:hidden">
          {state.taken !== undefined ? t('saved', { n: state.taken, left: left.length }) : state.problem ? null : state.words}
          {left.length > 0 && (
            <ul className="flex flex-wrap gap-x-4">
              {left.map(({ number, label }) => <li key={number}><a href={`#line-${number}`} className="inline-flex min-h-11 items-center underline">{t('toLine', { n: number, label })}</a></li>)}
            </ul>
          )}
        </div>
        <div data-saves tabIndex={-1} className="w-fit"><SendButton>{t('send')}</SendButton></div>
      </form>
    </FormContext>
  );
}

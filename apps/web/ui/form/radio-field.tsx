'use client';

import { useTranslations } from 'next-intl';
import type { ReactNode } from 'react';
import type { Choice } from './choice-field.tsx';
import { ChoiceGroup } from './choice-group.tsx';
import { MARK, PLATE } from './plate.ts';
import { describedBy, useField } from './form-context.ts';

interface RadioFieldProps {
  readonly name: string;
  readonly choices: readonly Choice[];
  readonly hint?: ReactNode;
  /** Shows "not told" among the choices. */
  readonly isOptional?: boolean;
  readonly value?: string | number | null | undefined;
}

/** One of a few, all in sight. */
export function RadioField({ name, choices, hint, isOptional = false, value }: RadioFieldProps) {
  const field = useField(name);
  const t = useTranslations('ui');
  const chosen = field.typed ?? (value === undefined || value === null ? '' : String(value));
  const all = isOptional ? [...choices, { value: '', words: t('noneTold') }] : choices;
  return (
    <ChoiceGroup name={name} isOptional={isOptional} hint={hint} hintId={field.hintId} errorId={field.errorId} describedBy={describedBy(field, hint)}>
      {all.map((choice, at) => (
        <label key={`${field.key}-${choice.value}`} className={PLATE}>
          {/* The summary of errors leads to the first one. */}
          <input id={at === 0 ? name : undefined} type="radio" name={name} value={choice.value} defaultChecked={choice.value === chosen} className={MARK} />
          {choice.words}
        </label>
      ))}
    </ChoiceGroup>
  );
}

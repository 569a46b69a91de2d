'use client';

import { useTranslations } from 'next-intl';
import type { ReactNode } from 'react';
import { Field } from './field.tsx';
import { INPUT } from './input-class.ts';
import { describedBy, useField } from './form-context.ts';

export interface Choice {
  readonly value: string;
  readonly words: string;
}

interface ChoiceFieldProps {
  readonly name: string;
  readonly choices: readonly Choice[];
  readonly hint?: ReactNode;
  readonly isOptional?: boolean;
  readonly value?: string | number | null | undefined;
  /** Told what was chosen, where other fields depend on it. */
  readonly choose?: (value: string) => void;
}

/** One of many. For a few, RadioField shows them all at once. */
export function ChoiceField({ name, choices, hint, isOptional, value, choose }: ChoiceFieldProps) {
  const field = useField(name);
  const t = useTranslations('ui');
  return (
    <Field name={name} hint={hint} isOptional={isOptional} hintId={field.hintId} errorId={field.errorId}>
      <select
        key={field.key}
        id={name}
        name={name}
        required={!isOptional}
        defaultValue={field.typed ?? value ?? ''}
        onChange={(event) => choose?.(event.target.value)}
        aria-invalid={field.error !== undefined}
        aria-describedby={describedBy(field, hint)}
        className={INPUT}
      >
        <option value="">{isOptional ? t('noneTold') : t('chooseOne')}</option>
        {choices.map((choice) => (
          <option key={choice.value} value={choice.value}>
            {choice.words}
          </option>
        ))}
      </select>
    </Field>
  );
}

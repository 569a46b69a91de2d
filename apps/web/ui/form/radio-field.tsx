'use client';

import type { ReactNode } from 'react';
import type { Choice } from './choice-field.tsx';
import { ChoiceGroup, MARK, PLATE } from './choice-group.tsx';
import { describedBy, useField } from './form-context.ts';

interface RadioFieldProps {
  readonly name: string;
  readonly choices: readonly Choice[];
  readonly hint?: ReactNode;
  readonly value?: string | number | null | undefined;
}

/** One of a few, all in sight. */
export function RadioField({ name, choices, hint, value }: RadioFieldProps) {
  const field = useField(name);
  const chosen = field.typed ?? (value === undefined || value === null ? undefined : String(value));
  return (
    <ChoiceGroup name={name} hint={hint} hintId={field.hintId} errorId={field.errorId} describedBy={describedBy(field, hint)}>
      {choices.map((choice, at) => (
        <label key={`${field.key}-${choice.value}`} className={PLATE}>
          {/* The summary of errors leads to the first one. */}
          <input id={at === 0 ? name : undefined} type="radio" name={name} value={choice.value} defaultChecked={choice.value === chosen} className={MARK} />
          {choice.words}
        </label>
      ))}
    </ChoiceGroup>
  );
}

'use client';

import { type ReactNode, useContext } from 'react';
import type { Choice } from './choice-field.tsx';
import { ChoiceGroup } from './choice-group.tsx';
import { MARK, PLATE } from './plate.ts';
import { describedBy, FormContext, useField } from './form-context.ts';

interface SeveralFieldProps {
  readonly name: string;
  readonly choices: readonly Choice[];
  readonly hint?: ReactNode;
  readonly isOptional?: boolean;
  readonly values?: readonly string[];
}

/** Any of a few, all in sight. Each is a tick of its own; read them with `several` of lib/form-values.ts. */
export function SeveralField({ name, choices, hint, isOptional = false, values = [] }: SeveralFieldProps) {
  const field = useField(name);
  const { turn, values: typed } = useContext(FormContext);
  return (
    <ChoiceGroup name={name} isOptional={isOptional} hint={hint} hintId={field.hintId} errorId={field.errorId} describedBy={describedBy(field, hint)}>
      {choices.map(({ value, words }, at) => (
        <label key={`${field.key}-${value}`} className={PLATE}>
          <input
            id={at === 0 ? name : undefined}
            type="checkbox"
            name={`${name}/${value}`}
            defaultChecked={turn > 0 && Object.keys(typed).length > 0 ? `${name}/${value}` in typed : values.includes(value)}
            className={MARK}
          />
          {words}
        </label>
      ))}
    </ChoiceGroup>
  );
}

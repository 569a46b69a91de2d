'use client';

import type { ReactNode } from 'react';
import { Field } from './field.tsx';
import { INPUT } from './input-class.ts';
import { describedBy, useField } from './form-context.ts';

interface TextFieldProps {
  readonly name: string;
  readonly hint?: ReactNode;
  readonly isOptional?: boolean;
  readonly isLabelHidden?: boolean;
  readonly value?: string | number | null | undefined;
  readonly type?: 'text' | 'email' | 'url' | 'search';
  /** What keypad a phone offers. Numbers are text with a keypad: number inputs change by a stray scroll. */
  readonly keypad?: 'text' | 'numeric' | 'decimal';
  readonly autoComplete?: string;
  readonly lang?: string;
}

export function TextField({ name, hint, isOptional, isLabelHidden, value, type = 'text', keypad, autoComplete = 'off', lang }: TextFieldProps) {
  const field = useField(name);
  const width = keypad === 'numeric' || keypad === 'decimal' ? 'max-w-40 tabular-nums' : '';
  return (
    <Field name={name} hint={hint} isOptional={isOptional} isLabelHidden={isLabelHidden} hintId={field.hintId} errorId={field.errorId}>
      <input
        key={field.key}
        id={name}
        name={name}
        type={type}
        inputMode={keypad}
        lang={lang}
        autoComplete={autoComplete}
        required={!isOptional}
        defaultValue={field.typed ?? value ?? ''}
        aria-invalid={field.error !== undefined}
        aria-describedby={describedBy(field, hint)}
        className={`${INPUT} ${width}`}
      />
    </Field>
  );
}

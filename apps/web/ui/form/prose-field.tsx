'use client';

import type { ReactNode } from 'react';
import { Field } from './field.tsx';
import { INPUT } from './input-class.ts';
import { describedBy, useField } from './form-context.ts';

interface ProseFieldProps {
  readonly name: string;
  readonly hint?: ReactNode;
  readonly isOptional?: boolean;
  readonly value?: string | null | undefined;
  readonly rows?: number;
}

/** A longer text of several lines. */
export function ProseField({ name, hint, isOptional, value, rows = 4 }: ProseFieldProps) {
  const field = useField(name);
  return (
    <Field name={name} hint={hint} isOptional={isOptional} hintId={field.hintId} errorId={field.errorId}>
      <textarea
        key={field.key}
        id={name}
        name={name}
        rows={rows}
        required={!isOptional}
        defaultValue={field.typed ?? value ?? ''}
        aria-invalid={field.error !== undefined}
        aria-describedby={describedBy(field, hint)}
        className={INPUT}
      />
    </Field>
  );
}

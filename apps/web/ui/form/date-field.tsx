'use client';

import type { ReactNode } from 'react';
import { Field } from './field.tsx';
import { describedBy, useField } from './form-context.ts';
import { INPUT } from './input-class.ts';

/** A day far off, such as the end of a permission. For something seen or done, DayField. */
export function DateField({ name, hint, isOptional, value }: { name: string; hint?: ReactNode; isOptional?: boolean; value?: string | null | undefined }) {
  const field = useField(name);
  return (
    <Field name={name} hint={hint} isOptional={isOptional} hintId={field.hintId} errorId={field.errorId}>
      <input
        key={field.key}
        id={name}
        name={name}
        type="date"
        required={!isOptional}
        defaultValue={field.typed ?? value ?? ''}
        aria-invalid={field.error !== undefined}
        aria-describedby={describedBy(field, hint)}
        className={`${INPUT} max-w-60`}
      />
    </Field>
  );
}

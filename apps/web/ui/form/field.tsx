'use client';

import { useTranslations } from 'next-intl';
import type { ReactNode } from 'react';
import { useField } from './form-context.ts';

interface FieldProps {
  readonly name: string;
  readonly hint?: ReactNode;
  readonly isOptional?: boolean | undefined;
  /** For a field in a row that shows already what it is about. */
  readonly isLabelHidden?: boolean | undefined;
  readonly children: ReactNode;
  readonly hintId: string;
  readonly errorId: string;
}

/** The frame of one field: its label, its hint, what is wrong with it, then the field itself. */
export function Field({ name, hint, isOptional, isLabelHidden, hintId, errorId, children }: FieldProps) {
  const { label, error } = useField(name);
  const t = useTranslations('ui');
  return (
    <div className={`w-full max-w-prose ${error ? 'border-l-4 border-rust pl-4' : ''}`}>
      <label htmlFor={name} className={isLabelHidden ? 'sr-only' : 'font-semibold'}>
        {label} {isOptional && <span className="font-normal text-ink-soft">{t('optional')}</span>}
      </label>
      {hint && (
        <p id={hintId} className="text-sm text-ink-soft">
          {hint}
        </p>
      )}
      {error && (
        <p id={errorId} className="font-semibold text-rust">
          {error}
        </p>
      )}
      <div className="mt-1">{children}</div>
    </div>
  );
}

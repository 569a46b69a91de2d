'use client';

import { useTranslations } from 'next-intl';
import type { ReactNode } from 'react';
import { useField } from './form-context.ts';

interface ChoiceGroupProps {
  readonly name: string;
  readonly isOptional?: boolean | undefined;
  readonly hint?: ReactNode;
  readonly hintId: string;
  readonly errorId: string;
  readonly describedBy: string | undefined;
  readonly children: ReactNode;
}

/** The frame around choices that belong to one question. */
export function ChoiceGroup({ name, isOptional, hint, hintId, errorId, describedBy, children }: ChoiceGroupProps) {
  const { label, error } = useField(name);
  const t = useTranslations('ui');
  return (
    <fieldset className={`w-full max-w-prose ${error ? 'border-l-4 border-rust pl-4' : ''}`} aria-describedby={describedBy}>
      <legend className="font-semibold">
        {label} {isOptional && <span className="font-normal text-ink-soft">{t('optional')}</span>}
      </legend>
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
      <div className="mt-2 flex flex-wrap gap-2">{children}</div>
    </fieldset>
  );
}

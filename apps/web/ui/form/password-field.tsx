'use client';

import { useTranslations } from 'next-intl';
import { type ReactNode, useState } from 'react';
import { buttonClass } from '../button-class.ts';
import { Field } from './field.tsx';
import { INPUT } from './input-class.ts';
import { describedBy, useField } from './form-context.ts';

interface PasswordFieldProps {
  readonly name: string;
  readonly hint?: ReactNode;
  readonly autoComplete: 'current-password' | 'new-password';
}

/** Can be shown, pasted into and filled by a password manager. */
export function PasswordField({ name, hint, autoComplete }: PasswordFieldProps) {
  const field = useField(name);
  const t = useTranslations('ui');
  const [isShown, setShown] = useState(false);
  return (
    <Field name={name} hint={hint} hintId={field.hintId} errorId={field.errorId}>
      <div className="flex gap-2">
        <input
          id={name}
          name={name}
          type={isShown ? 'text' : 'password'}
          autoComplete={autoComplete}
          spellCheck={false}
          required
          aria-invalid={field.error !== undefined}
          aria-describedby={describedBy(field, hint)}
          className={INPUT}
        />
        <button type="button" className={buttonClass('quiet')} aria-controls={name} aria-pressed={isShown} onClick={() => setShown(!isShown)}>
          {isShown ? t('hidePassword') : t('showPassword')}
        </button>
      </div>
    </Field>
  );
}

'use client';

import { useTranslations } from 'next-intl';
import type { ReactNode } from 'react';
import { useFormStatus } from 'react-dom';
import { type ButtonLook, buttonClass } from '../button-class.ts';

/** Sends the form around it. Stays pressable, so that a hung connection can be tried again: ids keep it from writing twice. */
export function SendButton({ look = 'main', children }: { look?: ButtonLook; children: ReactNode }) {
  const { pending } = useFormStatus();
  const t = useTranslations('ui');
  return (
    <button className={buttonClass(look)} aria-disabled={pending}>
      {pending ? t('working') : children}
    </button>
  );
}

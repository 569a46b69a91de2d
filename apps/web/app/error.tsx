'use client';

import { useTranslations } from 'next-intl';
import { buttonClass } from '../ui/button-class.ts';

/** The digest leads whoever runs the service to the log; nothing of the cause is shown. */
export default function Broken({ error, reset }: { error: Error & { digest?: string }; reset: () => void }) {
  const t = useTranslations('ui.broke');
  return (
    <main id="main" className="mx-auto max-w-prose px-4 py-16">
      <h1 className="text-2xl">{t('what')}</h1>
      <p className="mt-3">{t('todo')}</p>
      {error.digest && <p className="mt-3 font-semibold">{error.digest}</p>}
      <button type="button" onClick={reset} className={`${buttonClass()} mt-6`}>
        {t('again')}
      </button>
    </main>
  );
}

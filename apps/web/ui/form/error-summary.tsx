'use client';

import { useTranslations } from 'next-intl';
import { useContext, useEffect, useRef } from 'react';
import { strayErrors } from './field-errors.ts';
import { FormContext } from './form-context.ts';

/** Everything that is wrong, with a way to each field. Takes the focus when it appears, and marks the page's title. */
export function ErrorSummary() {
  const { problem, words, labels, errors } = useContext(FormContext);
  const t = useTranslations('ui');
  const box = useRef<HTMLDivElement>(null);

  useEffect(() => {
    box.current?.focus();
    const title = document.title;
    document.title = t('errorTitle', { title });
    return () => {
      document.title = title;
    };
  }, [t]);

  if (!problem) return null;
  return (
    <div ref={box} tabIndex={-1} role="alert" aria-labelledby="there-is-a-problem" className="w-full max-w-prose rounded-md border-2 border-rust bg-rust-wash p-4">
      <h2 id="there-is-a-problem" className="text-lg text-rust">
        {t('problem')}
      </h2>
      <p className="mt-1">{words}</p>
      <ul className="mt-2 grid gap-1 empty:hidden">
        {Object.entries(errors).map(([name, error]) => (
          <li key={name}>
            <a href={`#${name}`} className="font-semibold text-rust underline">
              {error}
            </a>
          </li>
        ))}
        {strayErrors(problem, labels).map((error) => (
          <li key={error}>{error}</li>
        ))}
      </ul>
    </div>
  );
}

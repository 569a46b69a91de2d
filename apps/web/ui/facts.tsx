import { useTranslations } from 'next-intl';
import type { ReactNode } from 'react';

export interface Fact {
  readonly term: string;
  /** Nothing: not told, and said so. */
  readonly says: ReactNode;
}

/** What is known about one thing, term by term. */
export function Facts({ facts }: { facts: readonly Fact[] }) {
  const t = useTranslations('ui');
  return (
    <dl className="grid max-w-2xl sm:grid-cols-[minmax(11rem,auto)_1fr]">
      {facts.map(({ term, says }) => (
        <div key={term} className="border-b border-line py-2.5 sm:contents">
          <dt className="text-ink-soft sm:border-b sm:border-line sm:py-2.5 sm:pr-8">{term}</dt>
          <dd className="sm:border-b sm:border-line sm:py-2.5">{says ?? <span className="text-ink-soft italic">{t('noneTold')}</span>}</dd>
        </div>
      ))}
    </dl>
  );
}

import { useTranslations } from 'next-intl';
import { sayDay } from '../../lib/calendar.ts';

/** The day of the books, what it leaves open, and what is called rooted. */
export function AsOfDay({ asOf, rootedMeans }: { asOf: string; rootedMeans: string }) {
  const t = useTranslations('reports');
  return (
    <p className="mb-6 max-w-prose text-ink-soft">
      <strong className="text-ink">{t('asOf', { day: sayDay(asOf) })}</strong> {t('asOfMore')} {t('rootedMeans', { means: rootedMeans })}
    </p>
  );
}

/** What the words of a report mean; printed with it. */
export function Definitions({ heading, says }: { heading: string; says: readonly string[] }) {
  return (
    <section className="mt-8 max-w-prose text-sm break-inside-avoid">
      <h2 className="text-lg">{heading}</h2>
      <ul className="mt-2 grid gap-1 text-ink-soft">{says.map((sentence) => <li key={sentence}>{sentence}</li>)}</ul>
    </section>
  );
}

import { useTranslations } from 'next-intl';
import { sayDay } from '../../lib/calendar.ts';

/** When a reading was taken, and what its programme calls rooted: printed with every rate. */
export function AsOf({ asOf, rootedMeans }: { asOf: string; rootedMeans: string }) {
  const t = useTranslations('readings');
  return <p className="mb-6 max-w-prose text-ink-soft">{t('asOf', { day: sayDay(asOf) })} {t('rootedMeans', { means: rootedMeans })}</p>;
}

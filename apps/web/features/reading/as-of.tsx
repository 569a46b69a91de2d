import { useTranslations } from 'next-intl';
import { sayDay } from '../../lib/calendar.ts';

/** When a reading was taken, and what its programme calls rooted: printed with every rate. */
export function AsOf({ asOf, rootedMeans }: { asOf: string; rootedMeans: string }) {
  const t = useTranslations('readings');
  return <p className="mb-6 max-w-prose text-ink-soft">{t('asOf', { day: sayDay(asOf) })} {t('rootedMeans', { means: rootedMeans })}</p>;
}

/** Days between which the cuttings of a reading were stuck; nothing where none is known. */
export function StuckBetween({ first, last }: { first: string | null; last: string | null }) {
  const t = useTranslations('readings');
  if (first === null || last === null) return null;
  return <>{first === last ? t('stuckOn', { first: sayDay(first) }) : t('stuckBetween', { first: sayDay(first), last: sayDay(last) })}</>;
}

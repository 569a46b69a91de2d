import { useTranslations } from 'next-intl';
import { daysFrom, sayDay } from '../../lib/calendar.ts';
import { Flag } from '../../ui/flag.tsx';

/** A due day beside today: since when it waits, or how far off it is. */
export function When({ day, today }: { day: string; today: string }) {
  const t = useTranslations('due');
  const n = daysFrom(today, day);
  return (
    <span className="inline-flex flex-wrap items-center gap-x-2">
      <span className="whitespace-nowrap">{sayDay(day)}</span>
      {n < 0 ? <Flag tone={n < -14 ? 'grave' : 'look'}>{t('late', { n: -n })}</Flag> : n === 0 ? <Flag tone="look">{t('today')}</Flag> : <span className="text-sm text-ink-soft">{t('ahead', { n })}</span>}
    </span>
  );
}

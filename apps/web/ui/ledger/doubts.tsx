import type { Discrepancy } from '@sprigline/contract';
import { useTranslations } from 'next-intl';
import { sayDay } from '../../lib/calendar.ts';

/** What does not add up, with the numbers: why an entry was refused or is asked about. */
export function Doubts({ doubts }: { doubts: readonly Discrepancy[] }) {
  const t = useTranslations('entries');
  return (
    <ul className="grid gap-1">
      {doubts.map(({ code, entryId, batchId, day, n, there }) => (
        <li key={`${code}-${entryId}-${batchId}`}>
          {t(`flags.${code}`, { n: n ?? 0 })} {t('doubts.line', { day: sayDay(day), there })}
        </li>
      ))}
    </ul>
  );
}

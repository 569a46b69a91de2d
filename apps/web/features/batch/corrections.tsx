import type { HistoryItem } from '@sprigline/contract';
import { useMessages, useTranslations } from 'next-intl';
import { sayMoment } from '../../lib/calendar.ts';
import { Flag } from '../../ui/flag.tsx';

/** How an entry came to say what it says: first as it was written, then every correction with its reason. */
export function Corrections({ item: { said, corrections }, say, zone }: { item: HistoryItem; say: (said: unknown) => string; zone: string }) {
  const { entries, batches } = useMessages();
  const t = useTranslations('batches');
  return (
    <details className="mt-1 text-sm">
      <summary className="inline-flex min-h-8 cursor-pointer items-center font-semibold underline">{t('corrections', { n: corrections.length })}</summary>
      <ol className="mt-1 grid gap-1 border-l-4 border-line pl-3">
        <li>{t('firstSaid', { what: say(said) })}</li>
        {corrections.map((one) => (
          <li key={one.id}>
            <strong>{entries.kinds[one.kind]}</strong>
            {one.kind === 'replaced' && `: ${say(one.said)}`}, {t('because', { reason: one.reason })}
            <span className="block text-ink-soft">
              {[one.writtenBy && t('writtenBy', { name: one.writtenBy }), sayMoment(one.receivedAt, zone)].filter(Boolean).join(' · ')} {!one.isEffective && <Flag tone="look">{batches.rival}</Flag>}
            </span>
          </li>
        ))}
      </ol>
    </details>
  );
}

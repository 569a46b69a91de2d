import type { StayShown } from '@sprigline/contract';
import { useMessages, useTranslations } from 'next-intl';
import { sayDay } from '../../lib/calendar.ts';
import { Flag } from '../../ui/flag.tsx';
import { Section } from '../../ui/section.tsx';

/** Where the batch stood, and what went wrong there meanwhile. */
export function Stays({ stays }: { stays: readonly StayShown[] }) {
  const { batches: said, entries } = useMessages();
  const t = useTranslations('batches');
  if (stays.length === 0) return null;
  return (
    <Section heading={said.stays}>
      <ol className="grid max-w-2xl gap-2">
        {stays.map(({ place, from, until, incidents, treatments }) => (
          <li key={`${from}-${place?.id}`} className="border-l-4 border-lichen-deep pl-3">
            <strong>{place?.name ?? said.unknown}</strong> <span className="text-ink-soft">{t('line.since', { day: sayDay(from) })}{until && `, ${t('until', { day: sayDay(until) })}`}</span>
            {incidents.map((incident) => (
              <p key={incident.entryId}>
                <Flag tone="look">{entries.incidents[incident.what]}</Flag> {entries.severities[incident.severity]}, {sayDay(incident.from)}–{incident.until ? sayDay(incident.until) : entries.stillSo}, {incident.placeName}{incident.detail && `: ${incident.detail}`}
              </p>
            ))}
            {treatments.map(({ entryId, what, day, product, placeName }) => <p key={entryId}><Flag>{entries.treatments[what]}</Flag> {[sayDay(day), placeName, product].filter(Boolean).join(', ')}</p>)}
          </li>
        ))}
      </ol>
    </Section>
  );
}

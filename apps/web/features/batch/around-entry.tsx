import type { StayShown } from '@sprigline/contract';
import { useMessages, useTranslations } from 'next-intl';
import { sayDay } from '../../lib/calendar.ts';
import { Flag } from '../../ui/flag.tsx';
import type { InTime } from './in-time.ts';

/** What went wrong or was done at the place where the batch stood: no entry of its own, and nothing that it booked. */
export function AroundEntry({ told }: { told: Exclude<InTime, { kind: 'entry' }> }) {
  return (
    <li className="grid gap-x-6 gap-y-1 border-b border-line py-4 sm:grid-cols-[8.5rem_1fr_auto]">
      <p className="text-ink-soft sm:text-right">{sayDay(told.day)}</p>
      <p className="min-w-0">{told.kind === 'incident' ? <IncidentThere incident={told.incident} /> : <TreatmentThere treatment={told.treatment} />}</p>
    </li>
  );
}

export function IncidentThere({ incident: { what, severity, from, until, placeName, detail } }: { incident: StayShown['incidents'][number] }) {
  const { entries } = useMessages();
  const t = useTranslations('dashboards.incidents');
  return (
    <><Flag tone="look">{entries.incidents[what]}</Flag> {entries.severities[severity]}, {until === null ? t('since', { from: sayDay(from) }) : until === from ? sayDay(from) : t('between', { from: sayDay(from), until: sayDay(until) })}, {placeName}{detail && `: ${detail}`}</>
  );
}

export function TreatmentThere({ treatment: { what, day, product, placeName } }: { treatment: StayShown['treatments'][number] }) {
  const { entries } = useMessages();
  return <><Flag>{entries.treatments[what]}</Flag> {[sayDay(day), placeName, product].filter(Boolean).join(', ')}</>;
}

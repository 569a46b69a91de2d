import type { IncidentOnAxis } from '@sprigline/contract';
import { useFormatter, useMessages, useTranslations } from 'next-intl';
import { sayDay } from '../../lib/calendar.ts';
import { Table } from '../../ui/table.tsx';

/** What happened where these plants stood, the latest first. */
export function IncidentsTable({ incidents }: { incidents: readonly IncidentOnAxis[] }) {
  const { dashboards: { incidents: said }, entries } = useMessages();
  const t = useTranslations('dashboards.incidents');
  const { number } = useFormatter();
  const words: Readonly<Record<string, string>> = entries.incidents;
  return (
    <Table
      caption={said.heading}
      rows={incidents}
      keyOf={({ entryId }) => entryId}
      columns={[
        { head: said.whatHead, cell: ({ what }) => words[what] ?? what },
        { head: said.place, cell: ({ place }) => place },
        { head: said.when, cell: ({ from, until }) => (until === null ? t('since', { from: sayDay(from) }) : from === until ? sayDay(from) : t('between', { from: sayDay(from), until: sayDay(until) })) },
        { head: said.severityHead, cell: ({ severity }) => said.severity[severity] },
        { head: said.batches, isNumber: true, cell: ({ batches }) => number(batches) },
      ]}
    />
  );
}

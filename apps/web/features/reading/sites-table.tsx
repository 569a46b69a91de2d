import type { SiteLine } from '@sprigline/contract';
import { useFormatter, useMessages } from 'next-intl';
import { sayDay } from '../../lib/calendar.ts';
import { pageOf } from '../../lib/page-address.ts';
import { RowLink } from '../../ui/row-link.tsx';
import { Table } from '../../ui/table.tsx';
import { queryOf } from './reading-address.ts';

/** Planting sites, a row each. */
export function SitesTable({ programme, sites, chosen }: { programme: string; sites: readonly SiteLine[]; chosen: Readonly<Record<string, string>> }) {
  const { dashboards: { sites: said } } = useMessages();
  const { number } = useFormatter();
  return (
    <Table
      caption={said.title}
      isCaptionHidden
      rows={sites}
      keyOf={({ siteId }) => siteId}
      columns={[
        { head: said.site, cell: ({ siteId, name }) => <RowLink href={`${pageOf(programme, 'readings', 'sites', siteId)}${queryOf(chosen)}`}>{name}</RowLink> },
        { head: said.came, isNumber: true, cell: ({ came }) => number(came) },
        { head: said.alive, isNumber: true, cell: ({ alive }) => number(alive) },
        { head: said.notFound, isNumber: true, cell: ({ notFound }) => number(notFound) },
        { head: said.lost, isNumber: true, cell: ({ lost }) => number(lost) },
        { head: said.donors, isNumber: true, cell: ({ donors }) => number(donors) },
        { head: said.lastChecked, cell: ({ lastCheckedOn }) => (lastCheckedOn === null ? said.never : sayDay(lastCheckedOn)) },
      ]}
    />
  );
}

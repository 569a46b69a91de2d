import type { CheckAtSite } from '@sprigline/contract';
import { useFormatter, useMessages } from 'next-intl';
import { sayDay } from '../../lib/calendar.ts';
import { Table } from '../../ui/table.tsx';
import { SiteBar } from './site-bar.tsx';

/** Checks of a site, day by day and plot by plot. */
export function ChecksTable({ checks }: { checks: readonly CheckAtSite[] }) {
  const { dashboards: { site: said } } = useMessages();
  const { number } = useFormatter();
  return (
    <Table
      caption={said.checks}
      isCaptionHidden
      rows={checks}
      keyOf={({ day, plotId }) => `${day} ${plotId}`}
      columns={[
        { head: said.checkDay, cell: ({ day }) => sayDay(day) },
        { head: said.plot, cell: ({ plot }) => plot },
        { head: said.seen, cell: ({ alive, notFound, dead }) => <div className="min-w-32"><SiteBar alive={alive} notFound={notFound} lost={dead} /></div> },
        { head: said.alive, isNumber: true, cell: ({ alive }) => number(alive) },
        { head: said.dead, isNumber: true, cell: ({ dead }) => number(dead) },
        { head: said.notFound, isNumber: true, cell: ({ notFound }) => number(notFound) },
        { head: said.notLooked, isNumber: true, cell: ({ notLooked }) => number(notLooked) },
      ]}
    />
  );
}

import type { DonorAtSite } from '@sprigline/contract';
import { useFormatter, useMessages } from 'next-intl';
import { pageOf } from '../../lib/page-address.ts';
import { Table } from '../../ui/table.tsx';
import { Tag } from '../../ui/tag.tsx';
import { percent } from '../../lib/percent.ts';

/** Donor trees at a site, the smallest share alive first. */
export function SiteDonorsTable({ programme, donors }: { programme: string; donors: readonly DonorAtSite[] }) {
  const { dashboards: { site: said } } = useMessages();
  const { number } = useFormatter();
  return (
    <Table
      caption={said.donorsHeading}
      isCaptionHidden
      rows={donors}
      keyOf={({ donor, stand, taxon }) => `${donor?.donorId ?? ''} ${stand ?? ''} ${taxon}`}
      columns={[
        { head: said.donor, cell: ({ donor }) => (donor ? <Tag href={pageOf(programme, 'donor-trees', donor.treeId)}>{donor.label}</Tag> : said.notKnown) },
        { head: said.stand, cell: ({ stand }) => stand ?? said.unknownStand },
        { head: said.came, isNumber: true, cell: ({ came }) => number(came) },
        { head: said.alive, isNumber: true, cell: ({ alive }) => number(alive) },
        { head: said.share, isNumber: true, cell: ({ came, alive }) => (came === 0 ? '' : percent(alive / came)) },
        { head: said.notFound, isNumber: true, cell: ({ notFound }) => number(notFound) },
        { head: said.died, isNumber: true, cell: ({ died }) => number(died) },
        { head: said.missing, isNumber: true, cell: ({ unaccounted }) => number(unaccounted) },
      ]}
    />
  );
}

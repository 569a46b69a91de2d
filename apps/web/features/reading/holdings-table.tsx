import type { DonorHolding } from '@sprigline/contract';
import { useMessages } from 'next-intl';
import { pageOf } from '../../lib/page-address.ts';
import { Flag } from '../../ui/flag.tsx';
import { Table } from '../../ui/table.tsx';
import { Tag } from '../../ui/tag.tsx';
import { WorkedOut } from './worked-out.tsx';

interface HoldingsTableProps {
  readonly programme: string;
  readonly donors: readonly DonorHolding[];
  readonly caption: string;
  /** On the page of one stand it goes without saying. */
  readonly isStandHidden?: boolean;
}

/** Donor trees with what is left of them, the fewest rooted plants first. */
export function HoldingsTable({ programme, donors, caption, isStandHidden = false }: HoldingsTableProps) {
  const { readings: { stand: said, fields }, home: { risks } } = useMessages();
  return (
    <>
      <Table
        caption={caption}
        isCaptionHidden
        rows={donors}
        keyOf={({ donorId }) => donorId}
        columns={[
          { head: said.donor, cell: ({ treeId, label }) => <Tag href={pageOf(programme, 'donor-trees', treeId)}>{label}</Tag> },
          ...(isStandHidden ? [] : [{ head: fields.standId, cell: ({ stand }: DonorHolding) => stand }]),
          { head: said.rootedNow, isNumber: true, cell: ({ rootedNow }) => rootedNow ?? said.notTold },
          { head: said.plantsNow, isNumber: true, cell: ({ plants }) => plants },
          { head: said.places, isNumber: true, cell: ({ places }) => places },
          {
            head: said.risk,
            cell: ({ risks: of }) => (
              <span className="flex flex-wrap gap-1">
                {of.map((risk) => <Flag key={risk} tone={risk === 'last-copies' ? 'grave' : 'look'}>{risks[risk]}</Flag>)}
              </span>
            ),
          },
        ]}
      />
      <div className="mt-3 text-sm"><WorkedOut what="risk" /></div>
    </>
  );
}

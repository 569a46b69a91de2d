import type { BatchInLine } from '@sprigline/contract';
import { useMessages } from 'next-intl';
import { sayDay } from '../../lib/calendar.ts';
import { pageOf } from '../../lib/page-address.ts';
import { StageMark } from '../../ui/stage-mark.tsx';
import { Table } from '../../ui/table.tsx';
import { Tag } from '../../ui/tag.tsx';

interface DescentBatchesProps {
  readonly programme: string;
  readonly batches: readonly BatchInLine[];
  readonly caption: string;
}

export function DescentBatches({ programme, batches, caption }: DescentBatchesProps) {
  const said = useMessages().donorTrees;
  return (
    <Table
      isStacked
      caption={caption}
      isCaptionHidden
      rows={batches}
      keyOf={({ id }) => id}
      columns={[
        { head: said.batch, cell: ({ id, label }) => <Tag href={pageOf(programme, 'batches', id)}>{label ?? said.noLabel}</Tag> },
        { head: said.stage, cell: ({ stage }) => <StageMark stage={stage} /> },
        { head: said.since, cell: ({ openedOn }) => sayDay(openedOn) },
        { head: said.place, cell: ({ place }) => place?.name },
        { head: said.alive, isNumber: true, cell: ({ balance }) => balance },
      ]}
    />
  );
}

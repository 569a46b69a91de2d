import type { FunnelStage } from '@sprigline/contract';
import { useFormatter, useMessages } from 'next-intl';
import { StageMark } from '../../ui/stage-mark.tsx';
import { Table } from '../../ui/table.tsx';
import { columnsOf } from './funnel-columns.ts';

/** The numbers of a paired funnel, and what became of the plants that did not go on. */
export function FunnelTable({ name, stages }: { name: string; stages: readonly FunnelStage[] }) {
  const { readings: { columns: said } } = useMessages();
  const { number } = useFormatter();
  return (
    <Table
      caption={name}
      isCaptionHidden
      rows={stages}
      keyOf={({ stage }) => stage}
      columns={[
        { head: said.stage, cell: ({ stage }) => <StageMark stage={stage} /> },
        ...columnsOf(stages).map(({ key, of }) => ({ head: said[key], isNumber: true, cell: (stage: FunnelStage) => number(of(stage)) })),
      ]}
    />
  );
}

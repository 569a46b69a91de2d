import type { FunnelStage } from '@sprigline/contract';
import { useMessages } from 'next-intl';
import { StageMark } from '../../ui/stage-mark.tsx';
import { Table } from '../../ui/table.tsx';

/** The numbers of a paired funnel, and what became of the plants that did not go on. */
export function FunnelTable({ name, stages }: { name: string; stages: readonly FunnelStage[] }) {
  const { readings: { columns: said } } = useMessages();
  const counts = ['reached', 'here', 'goneOn', 'unaccounted', 'notRooted', 'thrownOut', 'givenOut'] as const;
  const countOf = (key: (typeof counts)[number]) => ({ head: said[key], isNumber: true, cell: (stage: FunnelStage) => stage[key] });
  const died = { head: said.died, isNumber: true, cell: ({ died: of }: FunnelStage) => Object.values(of).reduce((sum, n) => sum + n, 0) };
  return (
    <Table
      caption={name}
      isCaptionHidden
      rows={stages}
      keyOf={({ stage }) => stage}
      columns={[
        { head: said.stage, cell: ({ stage }) => <StageMark stage={stage} /> },
        ...counts.slice(0, 3).map(countOf),
        died,
        ...counts.slice(3).map(countOf),
        { head: said.donorsReached, isNumber: true, cell: ({ donors }) => donors.reached },
        { head: said.donorsLeft, isNumber: true, cell: ({ donors }) => donors.left },
      ]}
    />
  );
}

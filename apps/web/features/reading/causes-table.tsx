import type { FunnelStage } from '@sprigline/contract';
import { useMessages } from 'next-intl';
import { StageMark, STAGES } from '../../ui/stage-mark.tsx';
import { Table } from '../../ui/table.tsx';

/** Deaths by cause and stage, most first. */
export function CausesTable({ about, stages }: { about: string; stages: readonly FunnelStage[] }) {
  const { readings: { stand: said } } = useMessages();
  const causes = [...new Set(stages.flatMap(({ died }) => Object.keys(died)))];
  const at = (cause: string, name: string): number => stages.find(({ stage }) => stage === name)?.died[cause] ?? 0;
  const rows = causes
    .map((cause) => ({ cause, plants: STAGES.reduce((sum, stage) => sum + at(cause, stage), 0) }))
    .sort((a, b) => b.plants - a.plants || (a.cause < b.cause ? -1 : 1));
  if (rows.length === 0) return <p className="text-ink-soft">{said.noDeaths}</p>;
  return (
    <Table
      caption={`${said.causes}: ${about}`}
      isCaptionHidden
      rows={rows}
      keyOf={({ cause }) => cause}
      columns={[
        { head: said.cause, cell: ({ cause }) => cause },
        ...STAGES.map((stage) => ({ head: <StageMark stage={stage} />, isNumber: true, cell: ({ cause }: (typeof rows)[number]) => at(cause, stage) || '' })),
        { head: said.plants, isNumber: true, cell: ({ plants }) => plants },
      ]}
    />
  );
}

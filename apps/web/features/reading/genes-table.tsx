import type { Diversity } from '@sprigline/contract';
import { useFormatter, useMessages, useTranslations } from 'next-intl';
import { StageMark } from '../../ui/stage-mark.tsx';
import { Table } from '../../ui/table.tsx';
import { percent } from '../../lib/percent.ts';

/** Table twin of the ribbons, with what follows from them. */
export function GenesTable({ stand }: { stand: Diversity['stands'][number] }) {
  const { readings: { stand: said, chart } } = useMessages();
  const t = useTranslations('readings.stand');
  const { number } = useFormatter();
  const hasMixed = stand.stages.some(({ mixedPlants }) => mixedPlants > 0);
  const mixed = { head: said.mixed, cell: ({ withMixed: { atLeast, expected, atMost } }: (typeof stand.stages)[number]) => (atLeast === atMost ? number(atLeast) : t('mixedOf', { atLeast, atMost, expected: expected.toFixed(1) })) };
  return (
    <Table
      caption={`${said.genes}: ${stand.taxon}`}
      isCaptionHidden
      rows={stand.stages}
      keyOf={({ stage }) => stage}
      columns={[
        { head: <span className="sr-only">{said.stage}</span>, cell: ({ stage }) => <StageMark stage={stage} /> },
        { head: chart.plants, isNumber: true, cell: ({ plants }) => number(plants) },
        { head: said.donors, isNumber: true, cell: ({ donors }) => number(donors) },
        { head: said.effective, isNumber: true, cell: ({ effective }) => effective?.order2.toFixed(1) },
        { head: said.largest, cell: ({ largest }) => largest && <span className="whitespace-nowrap">{t('largestOf', { label: largest.label, share: percent(largest.share) })}</span> },
        { head: said.capture, isNumber: true, cell: ({ donors, capture }) => (donors === 0 ? '' : percent(capture)) },
        ...(hasMixed ? [mixed] : []),
      ]}
    />
  );
}

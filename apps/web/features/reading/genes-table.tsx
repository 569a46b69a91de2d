import type { Diversity } from '@sprigline/contract';
import { useMessages, useTranslations } from 'next-intl';
import { StageMark } from '../../ui/stage-mark.tsx';
import { Table } from '../../ui/table.tsx';
import { percent } from './percent.ts';
import { WorkedOut } from './worked-out.tsx';

/** Donor trees in the plants of one stand and species, stage by stage. */
export function GenesTable({ stand }: { stand: Diversity['stands'][number] }) {
  const { readings: { stand: said } } = useMessages();
  const t = useTranslations('readings.stand');
  const hasMixed = stand.stages.some(({ mixedPlants }) => mixedPlants > 0);
  const mixed = { head: said.mixed, cell: ({ withMixed }: (typeof stand.stages)[number]) => t('mixedOf', { ...withMixed, expected: withMixed.expected.toFixed(1) }) };
  return (
    <>
      <Table
        caption={`${said.genes}: ${stand.taxon}`}
        isCaptionHidden
        rows={stand.stages}
        keyOf={({ stage }) => stage}
        columns={[
          { head: <span className="sr-only">{said.stage}</span>, cell: ({ stage }) => <StageMark stage={stage} /> },
          { head: said.donors, isNumber: true, cell: ({ donors }) => donors },
          { head: said.effective, isNumber: true, cell: ({ effective }) => effective?.order2.toFixed(1) },
          { head: said.largest, cell: ({ largest }) => largest && <span className="whitespace-nowrap">{t('largestOf', { label: largest.label, share: percent(largest.share) })}</span> },
          { head: said.capture, isNumber: true, cell: ({ donors, capture }) => (donors === 0 ? '' : percent(capture)) },
          ...(hasMixed ? [mixed] : []),
        ]}
      />
      <p className="mt-3 max-w-prose text-ink-soft">{t('donorTrees', { known: stand.donorTrees, distinct: stand.assumedDistinct })} {said.captureMore}</p>
      <div className="mt-3 text-sm"><WorkedOut what="genes" /></div>
    </>
  );
}

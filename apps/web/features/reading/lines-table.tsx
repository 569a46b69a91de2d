import type { ReadingLine } from '@sprigline/contract';
import { useFormatter, useMessages, useTranslations } from 'next-intl';
import { Table } from '../../ui/table.tsx';
import { percent } from '../../lib/percent.ts';

/** Table twin of the lines. */
export function LinesTable({ lines }: { lines: readonly ReadingLine[] }) {
  const { readings: { notKnown }, dashboards: { columns: said, lines: { heading } } } = useMessages();
  const t = useTranslations('dashboards.columns');
  const stage = useTranslations('words.stage');
  const { number } = useFormatter();
  return (
    <Table
      caption={heading}
      isCaptionHidden
      rows={lines}
      keyOf={({ key }) => key}
      columns={[
        { head: said.stand, cell: ({ name }) => name || notKnown.stand },
        { head: said.species, cell: ({ commonName, taxon }) => commonName ?? taxon },
        ...(['cutting', 'liner', 'potted', 'planted'] as const).map((of, at) => ({
          head: t('came', { stage: stage(of) }), isNumber: true,
          cell: ({ stages }: ReadingLine) => t('plantsAndTrees', { plants: stages[at]?.plants ?? 0, donors: stages[at]?.donors ?? 0 }),
        })),
        { head: said.here, isNumber: true, cell: ({ here }) => number(here) },
        { head: said.left, isNumber: true, cell: ({ donors }) => number(donors.left) },
        { head: said.atRisk, isNumber: true, cell: ({ atRisk }) => number(atRisk) },
        { head: said.undecided, isNumber: true, cell: ({ undecidedShare }) => (undecidedShare === null ? '' : percent(undecidedShare)) },
      ]}
    />
  );
}

import type { WorkdaySummary } from '@sprigline/contract';
import { useMessages } from 'next-intl';
import { Table } from '../../ui/table.tsx';
import { type SummaryLine, summaryLines, type SummaryWords } from './summary-lines.ts';

/** What was done, act by act, with a column for each species. */
export function SummaryTable({ summary, words }: { summary: WorkdaySummary; words: SummaryWords }) {
  const said = useMessages().workdays;
  const batches = (line: SummaryLine, at: number) => (line.act === 'counted' && (line.plants[at] ?? 0) > 0 ? words.inBatches(summary.species[at]?.batchesCounted ?? 0) : '');
  return (
    <Table<SummaryLine>
      caption={said.summary}
      isCaptionHidden
      rows={summaryLines(summary)}
      keyOf={({ act }) => act}
      columns={[
        { head: said.species, cell: ({ act }) => words.actOf(act) },
        ...summary.species.map((species, at) => ({
          head: words.nameOf(species), isNumber: true,
          cell: (line: SummaryLine) => <>{line.plants[at]} {batches(line, at) && <span className="block text-sm font-normal text-ink-soft">{batches(line, at)}</span>}</>,
        })),
      ]}
      foot={
        <tr>
          <th scope="row" className="px-4 py-3">{said.acts.donorTrees}</th>
          {summary.species.map(({ taxonId, donorTrees }) => <td key={taxonId ?? ''} className="px-4 py-3 text-right">{donorTrees}</td>)}
        </tr>
      }
    />
  );
}

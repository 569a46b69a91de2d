import type { WorkdaySummary } from '@sprigline/contract';
import type { DocumentProps } from '@react-pdf/renderer';
import { Text, View } from '@react-pdf/renderer';
import type { ReactElement } from 'react';
import { look } from '../../ui/paper/look.ts';
import { PaperSheet, type PaperSheetProps } from '../../ui/paper/paper-sheet.tsx';
import { PaperTable } from '../../ui/paper/paper-table.tsx';
import { type SummaryLine, summaryLines, type SummaryWords } from './summary-lines.ts';

interface SummaryPaperProps extends Omit<PaperSheetProps, 'children' | 'title'> {
  readonly summary: WorkdaySummary;
  readonly words: SummaryWords;
  /** Above the column of acts. */
  readonly species: string;
  /** Of the last line. */
  readonly donorTrees: string;
}

/** The one page of a workday. */
export const summaryPaper = ({ summary, words, species, donorTrees, ...sheet }: SummaryPaperProps): ReactElement<DocumentProps> => (
  <PaperSheet {...sheet} title={words.title}>
    {words.who.map((line) => <Text key={line} style={look.lead}>{line}</Text>)}
    {summary.species.length === 0 ? <Text>{words.nothing}</Text> : (
      <View style={{ marginTop: 6 }}>
        <PaperTable<SummaryLine | 'donorTrees'>
          rows={[...summaryLines(summary), 'donorTrees']}
          keyOf={(line) => (line === 'donorTrees' ? line : line.act)}
          columns={[
            { head: species, share: 3, cell: (line) => (line === 'donorTrees' ? donorTrees : words.actOf(line.act)) },
            ...summary.species.map((one, at) => ({
              head: words.nameOf(one), share: 2, isNumber: true,
              cell: (line: SummaryLine | 'donorTrees') => (line === 'donorTrees' ? one.donorTrees : plantsOf(line, at, words.inBatches(one.batchesCounted))),
            })),
          ]}
        />
      </View>
    )}
  </PaperSheet>
) as ReactElement<DocumentProps>;

function plantsOf({ act, plants }: SummaryLine, at: number, inBatches: string): string {
  const n = plants[at] ?? 0;
  return act === 'counted' && n > 0 ? `${n} ${inBatches}` : String(n);
}

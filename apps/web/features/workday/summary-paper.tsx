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
}

/** The one page of a workday. */
export const summaryPaper = ({ summary, words, species, ...sheet }: SummaryPaperProps): ReactElement<DocumentProps> => (
  <PaperSheet {...sheet} title={words.title}>
    {words.who.map((line) => <Text key={line} style={look.lead}>{line}</Text>)}
    {summary.species.length === 0 ? <Text>{words.nothing}</Text> : (
      <View style={{ marginTop: 6 }}>
        <PaperTable<SummaryLine>
          rows={summaryLines(summary)}
          keyOf={({ act }) => act}
          columns={[
            { head: species, share: 3, cell: ({ act }) => words.actOf(act) },
            ...summary.species.map((one, at) => ({
              head: words.nameOf(one), share: 2, isNumber: true,
              cell: ({ act, plants }: SummaryLine) => `${plants[at] ?? 0}${act === 'counted' && (plants[at] ?? 0) > 0 ? ` ${words.inBatches(one.batchesCounted)}` : ''}`,
            })),
          ]}
        />
      </View>
    )}
  </PaperSheet>
) as ReactElement<DocumentProps>;

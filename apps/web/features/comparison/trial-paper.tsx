import type { CompareBy, TrialLayout } from '@sprigline/contract';
import { Text, View } from '@react-pdf/renderer';
import type { Messages, useTranslations } from 'next-intl';
import { look } from '../../ui/paper/look.ts';
import { PaperTable, TickBox, WriteBox } from '../../ui/paper/paper-table.tsx';
import { chosenSize, isOfHormone, sizeSaid } from './trial-said.ts';

interface TrialPaperProps {
  readonly layout: TrialLayout;
  readonly by: CompareBy;
  readonly names: Readonly<Record<'first' | 'second', string>>;
  readonly said: Messages['comparison'];
  readonly caution: string;
  readonly t: ReturnType<typeof useTranslations<'comparison.trial'>>;
}

/** A trial at the bench: tree by tree in the order that dice gave, with boxes for what was really stuck. */
export function TrialPaper({ layout, by, names, said: { trial: said, paper }, caution, t }: TrialPaperProps) {
  const each = chosenSize(layout)?.cuttingsEach ?? '';
  if (layout.blocks.length === 0) return <Text>{said.noTrees}</Text>;
  return (
    <>
      <Text style={look.lead}>{by === 'place' ? said.leadPlace : said.lead}</Text>
      <Text style={look.lead}>{sizeSaid(layout, t)}</Text>
      {isOfHormone(by) && <View style={{ ...look.caution, marginTop: 0, marginBottom: 8 }} wrap={false}><Text>{caution}</Text></View>}
      <PaperTable
        rows={layout.blocks} keyOf={({ donor }) => donor}
        columns={[
          { head: said.tree, share: 1.6, cell: ({ donor }) => <Text style={look.code}>{donor}</Text> },
          { head: said.first, share: 2.6, cell: ({ order: [arm] }) => (arm ? names[arm] : '') },
          { head: paper.each, share: 0.9, isNumber: true, cell: () => each },
          { head: paper.stuck, share: 1, cell: () => <WriteBox /> },
          { head: said.second, share: 2.6, cell: ({ order: [, arm] }) => (arm ? names[arm] : '') },
          { head: paper.eachThen, share: 0.9, isNumber: true, cell: () => each },
          { head: paper.stuckThen, share: 1, cell: () => <WriteBox /> },
          { head: said.done, share: 0.7, cell: () => <TickBox /> },
        ]}
      />
      <Text style={{ marginTop: 8 }}>{paper.label}</Text>
    </>
  );
}

import type { DocumentProps } from '@react-pdf/renderer';
import { Text, View } from '@react-pdf/renderer';
import type { Messages } from 'next-intl';
import type { ReactElement } from 'react';
import { look } from '../../ui/paper/look.ts';
import { PaperSheet, type PaperSheetProps } from '../../ui/paper/paper-sheet.tsx';
import { PaperTable, TickBox, WriteBox } from '../../ui/paper/paper-table.tsx';
import type { PickLine } from './pick-lines.ts';

interface PickPaperProps extends Omit<PaperSheetProps, 'children'> {
  readonly said: Messages['requests'];
  readonly lead: string;
  readonly lines: readonly PickLine[];
  /** Why there is nothing to take, if there is nothing. */
  readonly empty: string;
}

/** The pick list on paper. A function and no component, since whoever prints it asks for the document itself. */
export const pickPaper = ({ said, lead, lines, empty, ...sheet }: PickPaperProps): ReactElement<DocumentProps> => (
  <PaperSheet {...sheet}>
    <Text style={look.lead}>{lines.length > 0 ? lead : empty}</Text>
    {lines.length > 0 && <PickTableOnPaper said={said} lines={lines} />}
    {lines.length > 0 && <Text style={look.heading}>{`${said.total}: ${lines.reduce((sum, { n }) => sum + n, 0)}`}</Text>}
  </PaperSheet>
) as ReactElement<DocumentProps>;

const PickTableOnPaper = ({ said, lines }: Pick<PickPaperProps, 'said' | 'lines'>) => (
  <PaperTable<PickLine>
    rows={lines}
    keyOf={({ batchId }) => batchId}
    columns={[
      { head: said.columns.label, share: 2, cell: ({ label }) => <Text style={look.code}>{label ?? said.untold}</Text> },
      { head: said.columns.n, share: 1, isNumber: true, cell: ({ n }) => <Text style={look.code}>{n}</Text> },
      { head: said.columns.place, share: 5, cell: ({ path }) => path.join(' › ') },
      { head: said.columns.donorTree, share: 2, cell: ({ donorTree }) => donorTree?.label ?? said.unknownTree },
      { head: said.columns.container, share: 2, cell: ({ container }) => container ?? '' },
      { head: said.columns.taken, share: 2, cell: () => <View style={{ flexDirection: 'row', gap: 4, alignItems: 'center' }}><TickBox /><WriteBox /></View> },
    ]}
  />
);

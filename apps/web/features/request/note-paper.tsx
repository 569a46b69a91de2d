import type { DespatchNote } from '@sprigline/contract';
import type { DocumentProps } from '@react-pdf/renderer';
import { Text, View } from '@react-pdf/renderer';
import type { Messages } from 'next-intl';
import type { ReactElement } from 'react';
import { sayDay } from '../../lib/calendar.ts';
import { look } from '../../ui/paper/look.ts';
import { PaperSheet, type PaperSheetProps } from '../../ui/paper/paper-sheet.tsx';
import { PaperTable } from '../../ui/paper/paper-table.tsx';

interface NotePaperProps extends Omit<PaperSheetProps, 'children'> {
  readonly said: Messages['requests'];
  /** To whom, where and when, how many: a line each. */
  readonly facts: readonly string[];
  readonly note: DespatchNote;
}

/** The despatch note on paper: it travels with the plants. */
export const notePaper = ({ said, facts, note, ...sheet }: NotePaperProps): ReactElement<DocumentProps> => (
  <PaperSheet {...sheet}>
    {facts.map((fact) => <Text key={fact}>{fact}</Text>)}
    <View style={{ height: 8 }} />
    <PaperTable<DespatchNote['lines'][number]>
      rows={note.lines}
      keyOf={({ entryId }) => entryId}
      columns={[
        { head: said.columns.label, share: 2, cell: ({ label }) => <Text style={look.code}>{label ?? said.untold}</Text> },
        { head: said.columns.n, share: 1, isNumber: true, cell: ({ n }) => (n === 0 ? said.takenBack : String(n)) },
        { head: said.columns.donorTree, share: 2, cell: ({ donorTree }) => donorTree?.label ?? said.unknownTree },
        { head: said.columns.stand, share: 3, cell: ({ stand }) => stand?.name ?? '' },
        { head: said.columns.stuckOn, share: 2, cell: ({ stuckOn }) => (stuckOn ? sayDay(stuckOn) : '') },
        { head: said.columns.container, share: 2, cell: ({ container }) => container ?? '' },
        { head: said.columns.toBatch, share: 2, cell: ({ toBatch }) => toBatch?.label ?? '' },
      ]}
    />
    <View wrap={false}>
      <Text style={look.caution}>{said.caution}</Text>
      <Text style={{ marginTop: 24 }}>{`${said.received} ______________________________   ${said.receivedOn} ______________`}</Text>
    </View>
  </PaperSheet>
) as ReactElement<DocumentProps>;

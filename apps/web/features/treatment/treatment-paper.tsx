import { Text, View } from '@react-pdf/renderer';
import type { Messages } from 'next-intl';
import { look } from '../../ui/paper/look.ts';
import { PaperTable } from '../../ui/paper/paper-table.tsx';
import type { TreatmentWords } from './treatment-words.ts';

/** The record on paper, for an inspector or for the door of the house. */
export function TreatmentPaper({ rows, said, asOf }: { rows: readonly (TreatmentWords & { id: string })[]; said: Messages['treatments']; asOf: string }) {
  const { columns } = said;
  const small = (text: string) => <Text style={{ fontSize: 8.5, lineHeight: 1.15 }}>{text}</Text>;
  return (
    <>
      <Text style={look.lead}>{asOf}</Text>
      {rows.length === 0 ? <Text>{said.empty}</Text> : (
        <PaperTable
          rows={rows} keyOf={({ id }) => id}
          columns={[
            { head: columns.day, share: 2, cell: ({ day }) => small(day) },
            { head: columns.what, share: 1.3, cell: ({ what }) => small(what) },
            { head: columns.where, share: 3, cell: ({ where }) => small(where) },
            { head: columns.product, share: 2.6, cell: ({ product }) => small(product) },
            { head: columns.rate, share: 2, cell: ({ rate }) => small(rate) },
            { head: columns.by, share: 1.8, cell: ({ by }) => small(by) },
            { head: columns.reentry, share: 2.2, cell: ({ reentry }) => small(reentry) },
            { head: columns.note, share: 2.4, cell: ({ note }) => small(note) },
          ]}
        />
      )}
      <View style={look.caution} wrap={false}><Text>{said.caution}</Text></View>
    </>
  );
}

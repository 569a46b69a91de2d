import { Text, View } from '@react-pdf/renderer';
import type { ReactNode } from 'react';
import { look } from './look.ts';

export interface PaperColumn<Row> {
  readonly head: string;
  /** Share of the width, beside the other columns' shares. */
  readonly share: number;
  readonly isNumber?: boolean;
  readonly cell: (row: Row) => ReactNode;
}

interface PaperTableProps<Row> {
  readonly columns: readonly PaperColumn<Row>[];
  readonly rows: readonly Row[];
  readonly keyOf: (row: Row) => string;
}

/** Rows that stay whole on a page, under a head that stands on each. */
export function PaperTable<Row>({ columns, rows, keyOf }: PaperTableProps<Row>) {
  const styles = columns.map(({ share, isNumber = false }, at) => [look.cell, { flexGrow: share, flexBasis: 0 }, !isNumber && columns[at - 1]?.isNumber ? look.afterNumber : {}]);
  return (
    <View>
      <View fixed style={look.rowHead}>
        {columns.map(({ head, isNumber = false }, at) => (
          <Text key={head} style={[...(styles[at] ?? []), isNumber ? look.number : {}]}>{head}</Text>
        ))}
      </View>
      {rows.map((row) => (
        <View key={keyOf(row)} wrap={false} style={look.row}>
          {columns.map(({ head, isNumber = false, cell }, at) => (
            <View key={head} style={[...(styles[at] ?? []), isNumber ? { alignItems: 'flex-end' } : {}]}>{asText(cell(row), isNumber)}</View>
          ))}
        </View>
      ))}
    </View>
  );
}

const asText = (said: ReactNode, isNumber: boolean): ReactNode =>
  typeof said === 'string' || typeof said === 'number' ? <Text style={isNumber ? look.number : {}}>{said}</Text> : said;

/** To write a number into. */
export const WriteBox = () => <View style={look.box} />;

/** To tick. */
export const TickBox = () => <View style={look.tick} />;

import { Text, View } from '@react-pdf/renderer';
import type { WorkList } from '@sprigline/contract';
import type { ReactElement } from 'react';
import { look } from '../../ui/paper/look.ts';
import { PaperSheet, type PaperSheetProps } from '../../ui/paper/paper-sheet.tsx';
import { PaperTable, TickBox, WriteBox } from '../../ui/paper/paper-table.tsx';
import { type Box, boxesOf, IS_A_TICK, IS_FOR_WORDS, lineWords, type SheetWords } from './line-words.ts';

interface SheetPdfProps extends Omit<PaperSheetProps, 'children'> {
  readonly list: WorkList;
  readonly words: SheetWords;
  readonly heads: Readonly<Record<Box | 'number' | 'where' | 'batch' | 'there', string>>;
  /** Above the lines: where plants go, the day and the people, what to take care of. */
  readonly lead: readonly string[];
  readonly caution: string | undefined;
}

/** Each says its own, with its size: a height is a multiple of the size told beside it, and of 18 where there is none. */
const CLOSE = { fontSize: 10, lineHeight: 1.15 };
const SMALL = { ...CLOSE, fontSize: 8 };

/** Shares of the width. Potted plants have no day of sticking to tell, and many boxes beside them. */
const SHARES = { where: 8, batch: 9, there: 8 };
const SHARES_BESIDE_MANY = { where: 7, batch: 10.5, there: 6 };

/** A work list as a document: a head and a code on each page, no batch split over two. */
export function SheetPdf({ list, words, heads, lead, caution, ...sheet }: SheetPdfProps) {
  const boxes = boxesOf(list.kind);
  const shares = boxes.length > 5 ? SHARES_BESIDE_MANY : SHARES;
  const rows = list.lines.map((line) => ({ number: line.number, ...lineWords(line, words) }));
  return (
    <PaperSheet {...sheet}>
      {lead.map((line) => <Text key={line} style={{ ...look.lead, ...CLOSE }}>{line}</Text>)}
      {caution && <Text style={{ ...look.caution, marginTop: 0, marginBottom: 8, ...CLOSE, fontSize: 8.5 }}>{caution}</Text>}
      <PaperTable
        rows={rows}
        keyOf={({ number }) => String(number)}
        columns={[
          { head: heads.number, share: 2, isNumber: true, cell: ({ number }) => <Text style={CLOSE}>{number}</Text> },
          { head: heads.where, share: shares.where, cell: ({ place, rows: inRows }) => <TwoLines first={place} second={inRows} isSmall /> },
          { head: heads.batch, share: shares.batch, cell: ({ label, from, species }) => <View><Text style={{ ...CLOSE, ...look.code }}>{label}</Text><Text style={SMALL}>{from}</Text>{species && <Text style={{ ...SMALL, fontStyle: 'italic' }}>{species}</Text>}</View> },
          { head: heads.there, share: shares.there, cell: ({ there, more, held }) => <View><TwoLines first={there} second={more.join('\n')} />{held && <Text style={{ ...SMALL, fontWeight: 700 }}>{held}</Text>}</View> },
          ...boxes.map((box) => ({ head: heads[box], share: IS_FOR_WORDS.has(box) ? 6 : 4.6, cell: () => boxFor(box) })),
        ]}
      />
    </PaperSheet>
  );
}

function TwoLines({ first, second, isSmall = false }: { first: string; second: string | undefined; isSmall?: boolean }) {
  return (
    <View>
      <Text style={isSmall ? { ...CLOSE, fontSize: 8.5 } : CLOSE}>{first}</Text>
      {second && <Text style={SMALL}>{second}</Text>}
    </View>
  );
}

function boxFor(box: Box): ReactElement {
  if (IS_A_TICK.has(box)) return <TickBox />;
  return IS_FOR_WORDS.has(box) ? <View style={{ height: 18, borderBottomWidth: 0.8 }} /> : <WriteBox />;
}

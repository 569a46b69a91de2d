import { Document, Page, StyleSheet, Text, View } from '@react-pdf/renderer';
import { look } from '../../ui/paper/look.ts';
import type { Paper } from '../../ui/paper/paper-size.ts';
import { QrCode } from '../../ui/paper/qr-code.tsx';
import type { TrayCard } from './cards.ts';

export interface CardWords {
  readonly label: string;
  readonly cuttings: (n: number) => string;
  readonly recipe: string;
  readonly tray: string;
  readonly rows: string;
  readonly day: string;
  readonly initials: string;
}

interface CardsPdfProps {
  readonly paper: Paper;
  readonly title: string;
  readonly cards: readonly TrayCard[];
  readonly words: CardWords;
  /** Stand and trip, at the foot of each card. */
  readonly foot: string;
  readonly leadsTo: (card: TrayCard) => string;
}

/** Points: two cards beside each other and four below, on A4 as on Letter, with room for any printer's edge. */
const WIDTH = 264;
const HEIGHT = 178;
const A_PAGE = 8;
/** What is left beside two cards on each paper, halved. */
const MARGIN: Readonly<Record<Paper, number>> = { A4: (595 - 2 * WIDTH) / 2, LETTER: (612 - 2 * WIDTH) / 2 };

const at = StyleSheet.create({
  page: { ...look.page, paddingTop: 30, paddingBottom: 30, flexDirection: 'row', flexWrap: 'wrap', alignContent: 'flex-start' },
  /** Lines to cut along. */
  card: { width: WIDTH, height: HEIGHT, padding: 10, borderWidth: 0.75, borderColor: '#777' },
  top: { flexDirection: 'row', justifyContent: 'space-between' },
  small: { fontSize: 8 },
  tree: { fontSize: 26, fontWeight: 700 },
  label: { fontSize: 15, fontWeight: 700 },
  line: { flexDirection: 'row', alignItems: 'flex-end', marginTop: 3 },
  write: { flexGrow: 1, borderBottomWidth: 0.8, minHeight: 15, marginLeft: 4, marginRight: 8, justifyContent: 'flex-end' },
});

/** Cards to cut out: the donor tree big, what is in it small, the rest to be written by hand. */
export function CardsPdf({ paper, title, cards, ...rest }: CardsPdfProps) {
  const pages = Array.from({ length: Math.ceil(cards.length / A_PAGE) }, (_, page) => cards.slice(page * A_PAGE, (page + 1) * A_PAGE));
  return (
    <Document title={title} language="en" creator="Sprigline" producer="Sprigline">
      {pages.map((each, page) => (
        <Page key={page} size={paper} style={{ ...at.page, paddingHorizontal: MARGIN[paper] }}>
          {each.map((card) => <Card key={card.key} card={card} {...rest} />)}
        </Page>
      ))}
    </Document>
  );
}

function Card({ card, words, foot, leadsTo }: Pick<CardsPdfProps, 'words' | 'foot' | 'leadsTo'> & { card: TrayCard }) {
  return (
    <View style={at.card} wrap={false}>
      <View style={at.top}>
        <View style={{ flexShrink: 1 }}>
          <Text style={at.tree}>{card.donorTree}</Text>
          <Text style={at.label}><Text style={at.small}>{words.label} </Text>{card.label}</Text>
          <Text style={{ fontStyle: 'italic' }}>{card.species}</Text>
          <Text>{words.cuttings(card.cuttings)}</Text>
        </View>
        <QrCode says={leadsTo(card)} size={74} />
      </View>
      <View style={at.line}><Blank head={words.recipe} says={card.recipe} /></View>
      <View style={at.line}><Blank head={words.tray} says={card.place} /><Blank head={words.rows} says={card.rows} /></View>
      <View style={at.line}><Blank head={words.day} says={card.stuckOn} /><Blank head={words.initials} says={undefined} /></View>
      <Text style={{ ...at.small, marginTop: 5 }}>{foot}</Text>
    </View>
  );
}

/** A line to write on, or what is known already. */
function Blank({ head, says }: { head: string; says: string | undefined }) {
  return (
    <>
      <Text style={at.small}>{head}</Text>
      <View style={at.write}>{says && <Text>{says}</Text>}</View>
    </>
  );
}

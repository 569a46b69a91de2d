import type { FunderReport, FunderRow, HandoverReport, LandownerReport, LandownerTree } from '@sprigline/contract';
import { Text, View } from '@react-pdf/renderer';
import type { Messages, useTranslations } from 'next-intl';
import { sayDay } from '../../lib/calendar.ts';
import { look } from '../../ui/paper/look.ts';
import { PaperHeading } from '../../ui/paper/paper-heading.tsx';
import { PaperTable } from '../../ui/paper/paper-table.tsx';
import { funderWords } from './funder-words.ts';
import { type HandoverList, placesInUse } from './handover-words.ts';
import { numbersOf, sitesIn } from './landowner-tables.tsx';

type Said = Messages['reports'];

/** The letter to a landowner: the sum in a sentence, where the trees went, tree by tree, and what the words mean. */
export function LandownerPaper({ report, said, lines }: { report: LandownerReport; said: Said['landowner']; lines: readonly string[] }) {
  const numbers = numbersOf(report.sum);
  return (
    <>
      {lines.map((line) => <Text key={line} style={look.lead}>{line}</Text>)}
      <PaperHeading>{said.sites}</PaperHeading>
      {report.sites.length === 0 ? <Text>{said.noSites}</Text> : (
        <PaperTable
          rows={report.sites} keyOf={({ name }) => name}
          columns={[{ head: said.columns.site, share: 4, cell: ({ name }) => name }, { head: said.columns.planted, share: 1, isNumber: true, cell: ({ planted }) => planted }, { head: said.columns.alive, share: 1, isNumber: true, cell: ({ alive }) => alive }]}
        />
      )}
      <PaperHeading>{said.perTree}</PaperHeading>
      <PaperTable
        rows={[...report.trees, { ...report.sum, id: 'sum', label: said.together, stand: '', taxon: '', sites: [] }]} keyOf={({ id }) => id}
        columns={[
          { head: said.columns.tree, share: 2, cell: ({ label }) => label },
          ...numbers.map((name) => ({ head: said.columns[name], share: 1.1, isNumber: true, cell: (tree: LandownerTree) => tree[name] })),
          { head: said.columns.where, share: 4, cell: (tree: LandownerTree) => sitesIn(tree) },
        ]}
      />
    </>
  );
}

/** The report to a funder: all of a species together, then site by site and season by season. */
export function FunderPaper({ report, said, t }: { report: FunderReport; said: Said['funder']; t: ReturnType<typeof useTranslations<'reports.funder'>> }) {
  const rows = [...report.totals.map((total) => ({ ...total, site: said.allSites, season: '' })), ...report.rows];
  const { columns } = said;
  const words = (row: FunderRow) => funderWords(row, t);
  if (rows.length === 0) return <Text>{said.empty}</Text>;
  return (
    <PaperTable
      rows={rows} keyOf={(row) => `${row.site} ${row.season} ${row.taxon} ${row.plantedOn?.first ?? ''}`}
      columns={[
        { head: columns.site, share: 4, cell: (row) => <View><Text>{row.site}</Text><Text style={{ fontSize: 8.5 }}>{[row.season, row.taxon].filter(Boolean).join(', ')}</Text></View> },
        { head: columns.planted, share: 1.4, isNumber: true, cell: (row) => row.planted },
        { head: columns.alive, share: 1.2, isNumber: true, cell: (row) => row.alive },
        { head: columns.dead, share: 1.2, isNumber: true, cell: (row) => row.dead },
        { head: columns.notFound, share: 1.3, isNumber: true, cell: (row) => row.notFound },
        { head: columns.notLooked, share: 1.4, isNumber: true, cell: (row) => words(row).notLooked },
        { head: columns.rate, share: 1.6, isNumber: true, cell: (row) => words(row).rate },
        { head: columns.without, share: 1.6, isNumber: true, cell: (row) => words(row).without },
        { head: columns.alone, share: 1.8, isNumber: true, cell: (row) => words(row).alone },
        { head: columns.unit, share: 2.2, cell: (row) => words(row).unit },
        { head: columns.age, share: 1.8, cell: (row) => words(row).age },
      ]}
    />
  );
}

/** How the programme stands, for whoever takes it over. */
export function HandoverPaper({ report, said, lists }: { report: HandoverReport; said: Said['handover']; lists: readonly HandoverList[] }) {
  return (
    <>
      <PaperHeading>{said.places}</PaperHeading>
      <PaperTable
        rows={placesInUse(report)} keyOf={({ id }) => id}
        columns={[
          { head: said.place, share: 4, cell: ({ name, depth }) => <Text style={{ marginLeft: depth * 12 }}>{name}</Text> },
          { head: said.batches, share: 1, isNumber: true, cell: ({ batches }) => batches },
          { head: said.plants, share: 1, isNumber: true, cell: ({ plants }) => plants },
          { head: said.note, share: 5, cell: ({ note }) => note ?? '' },
        ]}
      />
      <PaperHeading>{said.held}</PaperHeading>
      {report.held.length === 0 ? <Text>{said.noHeld}</Text> : (
        <PaperTable
          rows={report.held} keyOf={({ id }) => id}
          columns={[
            { head: said.batch, share: 2, cell: ({ id, label }) => label ?? id.slice(-6) },
            { head: said.plants, share: 1, isNumber: true, cell: ({ n }) => n },
            { head: said.place, share: 3, cell: ({ place }) => place },
            { head: said.since, share: 2, cell: ({ since }) => (since === null ? '' : sayDay(since)) },
            { head: said.reason, share: 5, cell: ({ reason }) => reason ?? '' },
          ]}
        />
      )}
      {lists.map(({ heading, says, none }) => (
        <View key={heading}>
          <PaperHeading>{heading}</PaperHeading>
          {says.length === 0 ? <Text>{none}</Text> : says.map((one) => <Text key={one}>{`– ${one}`}</Text>)}
        </View>
      ))}
    </>
  );
}

/** What the words of a report mean, on its last page. */
export function PaperDefinitions({ heading, says }: { heading: string; says: readonly string[] }) {
  return (
    <View wrap={false}>
      <PaperHeading>{heading}</PaperHeading>
      {says.map((sentence) => <Text key={sentence} style={{ fontSize: 8.5 }}>{sentence}</Text>)}
    </View>
  );
}

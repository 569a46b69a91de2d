import type { Trace } from '@sprigline/contract';
import { Text, View } from '@react-pdf/renderer';
import type { Messages } from 'next-intl';
import { sayDay } from '../../lib/calendar.ts';
import { look } from '../../ui/paper/look.ts';
import { PaperHeading } from '../../ui/paper/paper-heading.tsx';
import { PaperTable } from '../../ui/paper/paper-table.tsx';

interface TracePaperProps {
  readonly trace: Trace;
  readonly said: Messages['trace'];
  readonly stages: Messages['words']['stage'];
  readonly sums: string;
  /** How long two stood together, in words. */
  readonly days: (from: string, until: string | null) => string;
}

/** The whole trace on paper, to be handed to whoever asks. */
export function TracePaper({ trace, said, stages, sums, days }: TracePaperProps) {
  const { columns } = said;
  return (
    <>
      <Text style={look.lead}>{sums}</Text>
      {trace.isCut && <Text style={look.lead}>{said.cut}</Text>}
      <Text style={look.lead}>{`${said.trees}: ${trace.donorTrees.map(({ label, stand }) => `${label} (${stand})`).join(', ') || said.noTrees}`}</Text>
      <Text style={look.lead}>{`${said.trips}: ${trace.trips.map(({ stand, wentOn }) => `${stand}, ${sayDay(wentOn)}`).join('; ') || said.noTrips}`}</Text>
      <PaperTable
        rows={trace.batches} keyOf={({ id }) => id}
        columns={[
          { head: columns.way, share: 2.1, cell: ({ way }) => said.wayShort[way] },
          { head: columns.label, share: 2, cell: ({ label, held }) => `${label ?? said.noLabel}${held ? ` (${said.held})` : ''}` },
          { head: columns.stage, share: 2.2, cell: ({ stage }) => stages[stage] },
          { head: columns.n, share: 1.2, isNumber: true, cell: ({ n }) => n },
          { head: columns.place, share: 3.4, cell: ({ path }) => path.join(' › ') },
          { head: columns.since, share: 2.4, cell: ({ since }) => (since === null ? '' : sayDay(since)) },
          { head: columns.holder, share: 2.4, cell: ({ n, holder }) => (n > 0 ? (holder?.name ?? said.us) : said.gone) },
          { head: columns.donor, share: 1.7, cell: ({ donorTree }) => donorTree?.label ?? '' },
        ]}
      />
      <PaperHeading>{said.beside}</PaperHeading>
      {trace.beside.length === 0 ? <Text>{said.besideNone}</Text> : (
        <PaperTable
          rows={trace.beside} keyOf={({ id, place }) => `${id} ${place.id}`}
          columns={[
            { head: columns.label, share: 2, cell: ({ label }) => label ?? said.noLabel },
            { head: columns.stage, share: 3, cell: ({ stage }) => stages[stage] },
            { head: columns.n, share: 1.2, isNumber: true, cell: ({ n }) => n },
            { head: columns.together, share: 4, cell: ({ path }) => path.join(' › ') },
            { head: columns.when, share: 3, cell: ({ from, until }) => days(from, until) },
            { head: columns.now, share: 4, cell: ({ n, nowPath }) => (n > 0 ? nowPath.join(' › ') : said.gone) },
          ]}
        />
      )}
      <PaperHeading>{said.outside}</PaperHeading>
      {trace.outside.length === 0 ? <Text>{said.outsideNone}</Text> : (
        <PaperTable
          rows={trace.outside} keyOf={({ entryId, batchId }) => `${entryId} ${batchId}`}
          columns={[
            { head: columns.label, share: 2, cell: ({ label }) => label ?? said.noLabel },
            { head: columns.n, share: 1, isNumber: true, cell: ({ n }) => n },
            { head: columns.day, share: 2, cell: ({ day }) => sayDay(day) },
            { head: columns.to, share: 5, cell: ({ to }) => to ?? said.outsideTo },
          ]}
        />
      )}
      <View style={look.caution} wrap={false}><Text>{said.caution}</Text></View>
    </>
  );
}

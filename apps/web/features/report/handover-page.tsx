import type { HandoverReport } from '@sprigline/contract';
import { useMessages } from 'next-intl';
import { sayDay } from '../../lib/calendar.ts';
import { pageOf } from '../../lib/page-address.ts';
import { Section } from '../../ui/section.tsx';
import { Table } from '../../ui/table.tsx';
import { Tag } from '../../ui/tag.tsx';
import { Way } from '../../ui/way.tsx';
import { type HandoverList, placesInUse } from './handover-words.ts';

const INDENT = ['', 'pl-5', 'pl-10', 'pl-16'] as const;

/** How the programme stands, for whoever takes it over. */
export function HandoverPage({ programme, report, lists }: { programme: string; report: HandoverReport; lists: readonly HandoverList[] }) {
  const { reports: { handover: said } } = useMessages();
  return (
    <>
      <Section heading={said.places} lead={said.placesLead}>
        <Table
          caption={said.places} isCaptionHidden rows={placesInUse(report)} keyOf={({ id }) => id}
          columns={[
            { head: said.place, cell: ({ id, name, depth }) => <span className={INDENT[Math.min(depth, 3)]}><Way href={pageOf(programme, 'places', id)} className="underline">{name}</Way></span> },
            { head: said.batches, isNumber: true, cell: ({ batches }) => batches },
            { head: said.plants, isNumber: true, cell: ({ plants }) => plants },
            { head: said.note, cell: ({ note }) => note },
          ]}
        />
      </Section>
      <Section heading={said.held}>
        {report.held.length === 0 ? <p className="text-ink-soft">{said.noHeld}</p> : (
          <Table
            caption={said.held} isCaptionHidden rows={report.held} keyOf={({ id }) => id}
            columns={[
              { head: said.batch, cell: ({ id, label }) => <Tag href={pageOf(programme, 'batches', id)}>{label ?? id.slice(-6)}</Tag> },
              { head: said.plants, isNumber: true, cell: ({ n }) => n },
              { head: said.place, cell: ({ place }) => place },
              { head: said.since, cell: ({ since }) => since && sayDay(since) },
              { head: said.reason, cell: ({ reason }) => reason },
            ]}
          />
        )}
      </Section>
      {lists.map(({ heading, says, none }) => (
        <Section key={heading} heading={heading}>
          {says.length === 0 ? <p className="text-ink-soft">{none}</p> : <ul className="grid max-w-prose list-disc gap-1 pl-5">{says.map((one) => <li key={one}>{one}</li>)}</ul>}
        </Section>
      ))}
    </>
  );
}

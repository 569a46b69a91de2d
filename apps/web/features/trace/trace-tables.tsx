import type { StoodBeside, Trace, TracedBatch } from '@sprigline/contract';
import { useMessages, useTranslations } from 'next-intl';
import { sayDay } from '../../lib/calendar.ts';
import { pageOf } from '../../lib/page-address.ts';
import { Flag } from '../../ui/flag.tsx';
import { Section } from '../../ui/section.tsx';
import { StageMark } from '../../ui/stage-mark.tsx';
import { Table } from '../../ui/table.tsx';
import { Tag } from '../../ui/tag.tsx';

interface OfTrace {
  readonly programme: string;
  readonly trace: Trace;
}

/** The line, part by part; then what stood beside it, and what left the programme. */
export function TraceTables({ programme, trace }: OfTrace) {
  return (
    <>
      {(['itself', 'from', 'to'] as const).map((way) => <LinePart key={way} programme={programme} way={way} batches={trace.batches.filter((batch) => batch.way === way)} />)}
      <Beside programme={programme} beside={trace.beside} />
      <Outside programme={programme} trace={trace} />
    </>
  );
}

function LinePart({ programme, way, batches }: { programme: string; way: TracedBatch['way']; batches: readonly TracedBatch[] }) {
  const { trace: said } = useMessages();
  const t = useTranslations('trace');
  return (
    <Section heading={said.ways[way]}>
      {batches.length === 0 ? <p className="text-ink-soft">{said.none[way]}</p> : (
        <Table
          caption={said.ways[way]} isCaptionHidden rows={batches} keyOf={({ id }) => id}
          columns={[
            { head: said.columns.label, cell: (batch) => <BatchTag programme={programme} batch={batch} isPerhaps={batch.perhaps} /> },
            { head: said.columns.stage, cell: ({ stage }) => <StageMark stage={stage} /> },
            { head: said.columns.n, isNumber: true, cell: ({ n }) => (n === 0 ? said.gone : n) },
            { head: said.columns.place, cell: ({ path }) => path.join(' › ') },
            { head: said.columns.since, cell: ({ since }) => since && sayDay(since) },
            { head: said.columns.holder, cell: ({ n, holder }) => n > 0 && (holder?.name ?? said.us) },
            { head: said.columns.donor, cell: ({ donorTree }) => <span className="whitespace-nowrap">{donorTree?.label}</span> },
            { head: said.columns.from, cell: ({ from }) => from.map((one) => <span key={one.id} className="block">{t('fromOn', { n: one.n, label: one.label ?? said.noLabel, day: sayDay(one.day) })}</span>) },
          ]}
        />
      )}
    </Section>
  );
}

function BatchTag({ programme, batch, isPerhaps = false }: { programme: string; batch: { readonly id: string; readonly label: string | null; readonly held: boolean }; isPerhaps?: boolean }) {
  const { trace: said } = useMessages();
  return (
    <span className="flex flex-wrap items-center gap-2">
      <Tag href={pageOf(programme, 'batches', batch.id)}>{batch.label ?? said.noLabel}</Tag>
      {batch.held && <Flag tone="look">{said.held}</Flag>}
      {isPerhaps && <Flag>{said.perhaps}</Flag>}
    </span>
  );
}

function Beside({ programme, beside }: { programme: string; beside: readonly StoodBeside[] }) {
  const { trace: said } = useMessages();
  const t = useTranslations('trace');
  return (
    <Section heading={said.beside} lead={said.besideLead}>
      {beside.length === 0 ? <p className="text-ink-soft">{said.besideNone}</p> : (
        <Table
          caption={said.beside} isCaptionHidden rows={beside} keyOf={({ id, place }) => `${id} ${place.id}`}
          columns={[
            { head: said.columns.label, cell: (batch) => <BatchTag programme={programme} batch={batch} /> },
            { head: said.columns.stage, cell: ({ stage }) => <StageMark stage={stage} /> },
            { head: said.columns.n, isNumber: true, cell: ({ n }) => (n === 0 ? said.gone : n) },
            { head: said.columns.together, cell: ({ path }) => path.join(' › ') },
            { head: said.columns.when, cell: ({ from, until }) => (until === null ? t('daysOpen', { from: sayDay(from) }) : t('days', { from: sayDay(from), until: sayDay(until) })) },
            { head: said.columns.now, cell: ({ n, nowPath }) => n > 0 && nowPath.join(' › ') },
            { head: said.columns.holder, cell: ({ n, holder }) => n > 0 && (holder?.name ?? said.us) },
            { head: said.columns.donor, cell: ({ donorTree }) => <span className="whitespace-nowrap">{donorTree?.label}</span> },
          ]}
        />
      )}
    </Section>
  );
}

function Outside({ programme, trace: { outside } }: OfTrace) {
  const { trace: said } = useMessages();
  return (
    <Section heading={said.outside}>
      {outside.length === 0 ? <p className="text-ink-soft">{said.outsideNone}</p> : (
        <Table
          caption={said.outside} isCaptionHidden rows={outside} keyOf={({ entryId, batchId }) => `${entryId} ${batchId}`}
          columns={[
            { head: said.columns.label, cell: ({ batchId, label }) => <Tag href={pageOf(programme, 'batches', batchId)}>{label ?? said.noLabel}</Tag> },
            { head: said.columns.n, isNumber: true, cell: ({ n }) => n },
            { head: said.columns.day, cell: ({ day }) => sayDay(day) },
            { head: said.columns.to, cell: ({ to }) => to ?? said.outsideTo },
          ]}
        />
      )}
    </Section>
  );
}

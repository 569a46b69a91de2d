import type { StoodBeside, Trace, TracedBatch } from '@sprigline/contract';
import { csvOf } from '../http/csv.ts';

const HEADINGS = [
  'part', 'label', 'stage', 'plants', 'held', 'place', 'since', 'until', 'holder', 'donor tree', 'stand', 'species', 'opened on', 'came from', 'perhaps only', 'as of',
];

/** One row a batch; then what stood beside them, and what left the programme. */
export function traceAsCsv(trace: Trace): string {
  const { asOf, batches, beside, outside } = trace;
  const rows = [
    ...batches.map((batch) => [...lineRow(batch), asOf]),
    ...beside.map((batch) => [...besideRow(batch), asOf]),
    ...outside.map(({ label, n, day, to }) => ['given out', label ?? '', undefined, n, '', '', day, '', to ?? 'not told', '', '', '', '', '', '', asOf]),
  ];
  if (trace.isCut) rows.push(['more was found than stands here', ...Array.from({ length: HEADINGS.length - 2 }, () => ''), asOf]);
  return csvOf(HEADINGS, rows);
}

const PARTS = { itself: 'asked about', from: 'came from', to: 'went to' } as const;

const lineRow = ({ way, label, stage, n, held, path, since, holder, donorTree, stand, taxon, openedOn, from, perhaps }: TracedBatch) => [
  PARTS[way], label ?? '', stage, n, held ? 'held' : '', path.join(' / '), since ?? '', '', holder?.name ?? '', donorTree?.label ?? '', stand?.name ?? '', taxon ?? '',
  openedOn, from.map((one) => one.label ?? one.id.slice(-6)).join('; '), perhaps ? 'perhaps' : '',
];

const besideRow = ({ label, stage, n, held, path, from, until, holder, donorTree }: StoodBeside) => [
  'stood beside', label ?? '', stage, n, held ? 'held' : '', path.join(' / '), from, until ?? '', holder?.name ?? '', donorTree?.label ?? '', '', '', '', '', '',
];

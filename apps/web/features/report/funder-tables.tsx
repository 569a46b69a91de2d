import type { FunderReport, FunderRow } from '@sprigline/contract';
import { useMessages, useTranslations } from 'next-intl';
import { Section } from '../../ui/section.tsx';
import { Species } from '../../ui/species.tsx';
import { Table } from '../../ui/table.tsx';
import { funderWords } from './funder-words.ts';

/** Site by site and season by season; then each species together, which is a sum and no average. */
export function FunderTables({ report: { rows, totals } }: { report: FunderReport }) {
  const { reports: { funder: said } } = useMessages();
  const all = totals.map((total) => ({ ...total, site: said.allSites, season: '' }));
  return (
    <>
      <Section heading={said.total}><Rows caption={said.total} rows={all} /></Section>
      <Section heading={said.rows}><Rows caption={said.rows} rows={rows} /></Section>
    </>
  );
}

function Rows({ caption, rows }: { caption: string; rows: readonly FunderRow[] }) {
  const { reports: { funder: { columns } } } = useMessages();
  const t = useTranslations('reports.funder');
  const words = (row: FunderRow) => funderWords(row, t);
  return (
    <Table
      caption={caption} isCaptionHidden rows={rows} keyOf={(row) => `${row.site} ${row.season} ${row.taxon} ${row.plantedOn?.first ?? ''}`}
      columns={[
        { head: columns.site, cell: (row) => <Where row={row} words={words(row)} /> },
        { head: columns.planted, isNumber: true, cell: (row) => row.planted },
        { head: columns.alive, isNumber: true, cell: (row) => row.alive },
        { head: columns.dead, isNumber: true, cell: (row) => row.dead },
        { head: columns.notFound, isNumber: true, cell: (row) => row.notFound },
        { head: columns.notLooked, isNumber: true, cell: (row) => words(row).notLooked },
        { head: columns.rate, isNumber: true, cell: (row) => <strong>{words(row).rate}</strong> },
        { head: columns.without, isNumber: true, cell: (row) => words(row).without },
        { head: columns.alone, isNumber: true, cell: (row) => <span className="whitespace-nowrap">{words(row).alone}</span> },
        { head: columns.unit, cell: (row) => <span className="block min-w-24">{words(row).unit}</span> },
      ]}
    />
  );
}

/** Where and of which season, and by which look the numbers beside it are known. */
function Where({ row: { site, season, taxon }, words: { checked, age } }: { row: FunderRow; words: ReturnType<typeof funderWords> }) {
  const { reports: { funder: { columns } } } = useMessages();
  return (
    <span className="block min-w-40">
      {site}
      <span className="block text-sm font-normal text-ink-soft">{season} <Species name={taxon} /></span>
      {checked && <span className="block text-sm font-normal text-ink-soft">{columns.checked}: {[checked, age].filter(Boolean).join(', ')}</span>}
    </span>
  );
}

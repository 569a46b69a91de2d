import type { LandownerReport, LandownerTree } from '@sprigline/contract';
import { useMessages, useTranslations } from 'next-intl';
import { Section } from '../../ui/section.tsx';
import { Table } from '../../ui/table.tsx';

const NUMBERS = ['taken', 'stuck', 'rooted', 'potted', 'planted', 'alive', 'lost', 'givenOut'] as const;

/** The columns of numbers: what nothing came in by is left out. */
export const numbersOf = (sum: LandownerReport['sum']) =>
  [...NUMBERS, ...(sum.received > 0 ? (['received'] as const) : []), ...(sum.mixedAway > 0 ? (['mixedAway'] as const) : [])];

export const sitesIn = (tree: LandownerTree): string => tree.sites.map(({ name, planted }) => `${name}: ${planted}`).join(', ');

/** Tree by tree, and where they were planted. */
export function LandownerTables({ report: { trees, sum, sites } }: { report: LandownerReport }) {
  const { reports: { landowner: said } } = useMessages();
  const t = useTranslations('reports.landowner');
  const numbers = numbersOf(sum);
  return (
    <>
      <Section heading={said.sites}>
        {sites.length === 0 ? <p className="text-ink-soft">{said.noSites}</p> : (
          <Table
            caption={said.sites} isCaptionHidden rows={sites} keyOf={({ name }) => name}
            columns={[{ head: said.columns.site, cell: ({ name }) => name }, { head: said.columns.planted, isNumber: true, cell: ({ planted }) => planted }, { head: said.columns.alive, isNumber: true, cell: ({ alive }) => alive }]}
          />
        )}
      </Section>
      <Section heading={said.perTree}>
        <Table
          caption={said.perTree} isCaptionHidden rows={trees} keyOf={({ id }) => id}
          columns={[
            { head: said.columns.tree, cell: ({ label }) => label },
            ...numbers.map((name) => ({ head: said.columns[name], isNumber: true, cell: (tree: LandownerTree) => tree[name] })),
            { head: said.columns.where, cell: (tree: LandownerTree) => tree.sites.map(({ name, planted }) => <span key={name} className="block">{t('siteOf', { name, n: planted })}</span>) },
          ]}
          foot={<tr><th scope="row" className="px-4 py-3 text-left">{said.together}</th>{numbers.map((name) => <td key={name} className="px-4 py-3 text-right">{sum[name]}</td>)}<td /></tr>}
        />
      </Section>
    </>
  );
}

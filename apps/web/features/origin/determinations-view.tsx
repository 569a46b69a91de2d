import type { Determinations } from '@sprigline/contract';
import { useMessages, useTranslations } from 'next-intl';
import { sayDay } from '../../lib/calendar.ts';
import { pageOf } from '../../lib/page-address.ts';
import { Flag } from '../../ui/flag.tsx';
import { Section } from '../../ui/section.tsx';
import { Table } from '../../ui/table.tsx';
import { Tag } from '../../ui/tag.tsx';

/** Of which tree a sticking is now, and all that was ever said about it. */
export function DeterminationsView({ programme, sticking, said: rows }: Determinations & { programme: string }) {
  const said = useMessages().origins;
  const t = useTranslations('origins');
  const { donorTree, taxon } = sticking;
  return (
    <>
      <Section heading={said.now}>
        {donorTree ? (
          <p className="flex flex-wrap items-center gap-3"><Tag href={pageOf(programme, 'donor-trees', donorTree.id)}>{donorTree.label}</Tag> {t('nowOf', { tree: donorTree.label, stand: donorTree.stand.name, taxon: taxon.name })}</p>
        ) : (
          <p>{t('nowUnknown', { taxon: taxon.name })}</p>
        )}
      </Section>
      <Section heading={said.said}>
        {rows.length === 0 ? (
          <p className="text-ink-soft">{said.saidNone}</p>
        ) : (
          <Table
            caption={said.said}
            isCaptionHidden
            rows={rows}
            keyOf={({ id }) => id}
            columns={[
              { head: said.columns.on, cell: ({ determinedOn }) => sayDay(determinedOn) },
              { head: said.columns.tree, cell: (one) => one.donorTree?.label ?? said.unknown },
              { head: said.columns.evidence, cell: ({ evidence }) => evidence },
              { head: said.columns.by, cell: ({ by }) => by },
              { head: said.columns.holds, cell: ({ holds }) => holds && <Flag tone="good">{said.holds}</Flag> },
            ]}
          />
        )}
      </Section>
    </>
  );
}

import { getMessages } from 'next-intl/server';
import { nameIn, partnersOf, sitesOf } from '../../../../lib/lists.ts';
import { pageOf } from '../../../../lib/page-address.ts';
import { titled } from '../../../../lib/titled.ts';
import { workplaceOf } from '../../../../lib/workplace.ts';
import { Cell } from '../../../../ui/cell.tsx';
import { ListPage } from '../../../../ui/list-page.tsx';
import { RowLink } from '../../../../ui/row-link.tsx';

export const generateMetadata = titled(({ sites }) => sites.title);

export default async function SitesPage({ params }: { params: Promise<{ programme: string }> }) {
  const { programme } = await params;
  const [{ isDesk, role }, sites, partners, { sites: said }] = await Promise.all([workplaceOf(programme), sitesOf(programme), partnersOf(programme), getMessages()]);
  return (
    <ListPage
      title={said.title}
      lead={said.lead}
      empty={said.empty}
      add={isDesk ? { href: pageOf(programme, 'sites', 'new'), words: said.add } : undefined}
      rows={sites}
      keyOf={({ id }) => id}
      columns={[
        { head: said.fields.name, cell: ({ id, name }) => <RowLink href={pageOf(programme, 'sites', id)}>{name}</RowLink> },
        { head: said.fields.land, cell: ({ land }) => land },
        ...(role === 'partner' ? [] : [{ head: said.fields.partnerId, cell: ({ partnerId }: { partnerId: string | null }) => partnerId && nameIn(partners, partnerId) }]),
        { head: said.cell, cell: ({ cell }) => <Cell cell={cell} /> },
        { head: said.plotCount, isNumber: true, cell: ({ plots }) => plots.length },
      ]}
    />
  );
}

import { getMessages } from 'next-intl/server';
import { nameIn, partnersOf, standsOf } from '../../../../lib/lists.ts';
import { pageOf } from '../../../../lib/page-address.ts';
import { titled } from '../../../../lib/titled.ts';
import { workplaceOf } from '../../../../lib/workplace.ts';
import { Cell } from '../../../../ui/cell.tsx';
import { ListPage } from '../../../../ui/list-page.tsx';
import { RowLink } from '../../../../ui/row-link.tsx';

export const generateMetadata = titled(({ stands }) => stands.title);

export default async function StandsPage({ params }: { params: Promise<{ programme: string }> }) {
  const { programme } = await params;
  const [{ isDesk, role }, stands, partners, { stands: said }] = await Promise.all([workplaceOf(programme), standsOf(programme), partnersOf(programme), getMessages()]);
  return (
    <ListPage
      title={said.title}
      lead={said.lead}
      empty={said.empty}
      add={isDesk ? { href: pageOf(programme, 'stands', 'new'), words: said.add } : undefined}
      rows={stands}
      keyOf={({ id }) => id}
      columns={[
        { head: said.fields.name, cell: ({ id, name }) => <RowLink href={pageOf(programme, 'stands', id)}>{name}</RowLink> },
        ...(role === 'partner' ? [] : [{ head: said.fields.partnerId, cell: ({ partnerId }: { partnerId: string | null }) => partnerId && nameIn(partners, partnerId) }]),
        { head: said.cell, cell: ({ cell }) => <Cell cell={cell} /> },
      ]}
    />
  );
}

import { getMessages } from 'next-intl/server';
import { sayDay } from '../../../../lib/calendar.ts';
import { partnersOf } from '../../../../lib/lists.ts';
import { pageOf } from '../../../../lib/page-address.ts';
import { titled } from '../../../../lib/titled.ts';
import { workplaceOf } from '../../../../lib/workplace.ts';
import { ListPage } from '../../../../ui/list-page.tsx';
import { RowLink } from '../../../../ui/row-link.tsx';

export const generateMetadata = titled(({ partners }) => partners.title);

export default async function PartnersPage({ params }: { params: Promise<{ programme: string }> }) {
  const { programme } = await params;
  const [{ isDesk }, partners, { partners: said }] = await Promise.all([workplaceOf(programme), partnersOf(programme), getMessages()]);
  return (
    <ListPage
      title={said.title}
      lead={said.lead}
      empty={said.empty}
      add={isDesk ? { href: pageOf(programme, 'partners', 'new'), words: said.add } : undefined}
      rows={partners}
      keyOf={({ id }) => id}
      columns={[
        { head: said.fields.name, cell: ({ id, name }) => <RowLink href={pageOf(programme, 'partners', id)}>{name}</RowLink> },
        { head: said.fields.since, cell: ({ since }) => sayDay(since) },
        { head: said.fields.until, cell: ({ until }) => until && sayDay(until) },
      ]}
    />
  );
}

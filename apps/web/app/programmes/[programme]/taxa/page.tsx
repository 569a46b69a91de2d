import { getMessages } from 'next-intl/server';
import { taxaOf } from '../../../../lib/lists.ts';
import { pageOf } from '../../../../lib/page-address.ts';
import { titled } from '../../../../lib/titled.ts';
import { workplaceOf } from '../../../../lib/workplace.ts';
import { ListPage } from '../../../../ui/list-page.tsx';
import { RowLink } from '../../../../ui/row-link.tsx';
import { Species } from '../../../../ui/species.tsx';

export const generateMetadata = titled(({ taxa }) => taxa.title);

export default async function TaxaPage({ params }: { params: Promise<{ programme: string }> }) {
  const { programme } = await params;
  const [{ isDesk }, taxa, { taxa: said, words }] = await Promise.all([workplaceOf(programme), taxaOf(programme), getMessages()]);
  return (
    <ListPage
      title={said.title}
      lead={said.lead}
      empty={said.empty}
      add={isDesk ? { href: pageOf(programme, 'taxa', 'new'), words: said.add } : undefined}
      rows={taxa}
      keyOf={({ id }) => id}
      columns={[
        { head: said.fields.scientificName, cell: ({ id, scientificName }) => <RowLink href={pageOf(programme, 'taxa', id)}><Species name={scientificName} /></RowLink> },
        { head: said.fields.commonName, cell: ({ commonName }) => commonName },
        { head: said.fields.sensitivity, cell: ({ sensitivity }) => words.sensitivity[`${sensitivity as 0}`] },
      ]}
    />
  );
}

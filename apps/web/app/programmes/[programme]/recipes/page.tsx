import { getMessages } from 'next-intl/server';
import { sayDay } from '../../../../lib/calendar.ts';
import { recipesOf } from '../../../../lib/lists.ts';
import { pageOf } from '../../../../lib/page-address.ts';
import { titled } from '../../../../lib/titled.ts';
import { workplaceOf } from '../../../../lib/workplace.ts';
import { ListPage } from '../../../../ui/list-page.tsx';
import { RowLink } from '../../../../ui/row-link.tsx';

export const generateMetadata = titled(({ recipes }) => recipes.title);

export default async function RecipesPage({ params }: { params: Promise<{ programme: string }> }) {
  const { programme } = await params;
  const [{ isDesk }, recipes, { recipes: said }] = await Promise.all([workplaceOf(programme), recipesOf(programme), getMessages()]);
  return (
    <ListPage
      title={said.title}
      lead={said.lead}
      empty={said.empty}
      add={isDesk ? { href: pageOf(programme, 'recipes', 'new'), words: said.add } : undefined}
      rows={recipes}
      keyOf={({ id }) => id}
      columns={[
        { head: said.fields.name, cell: ({ id, name }) => <RowLink href={pageOf(programme, 'recipes', id)}>{name}</RowLink> },
        { head: said.fields.hormone, cell: ({ versions }) => versions[0]?.hormone ?? said.noHormone },
        { head: said.fields.medium, cell: ({ versions }) => versions[0]?.medium },
        { head: said.versions, isNumber: true, cell: ({ versions }) => versions.length },
        { head: said.newest, cell: ({ versions }) => versions[0] && sayDay(versions[0].madeOn) },
      ]}
    />
  );
}

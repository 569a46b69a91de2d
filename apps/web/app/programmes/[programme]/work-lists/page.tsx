import { WorkListInList } from '@sprigline/contract';
import { getMessages, getTranslations } from 'next-intl/server';
import { z } from 'zod';
import { sayMoment } from '../../../../lib/calendar.ts';
import { nameIn, peopleOf, placesOf, standsOf, taxaOf, taxonName } from '../../../../lib/lists.ts';
import { pageOf } from '../../../../lib/page-address.ts';
import { readPart } from '../../../../lib/pages.ts';
import { titled } from '../../../../lib/titled.ts';
import { apiOf, workplaceOf } from '../../../../lib/workplace.ts';
import { ButtonLink } from '../../../../ui/button-link.tsx';
import { ListPage } from '../../../../ui/list-page.tsx';
import { RowLink } from '../../../../ui/row-link.tsx';

interface WorkListsPageProps {
  readonly params: Promise<{ programme: string }>;
  readonly searchParams: Promise<{ after?: string }>;
}

export const generateMetadata = titled(({ workLists }) => workLists.title);

export default async function WorkListsPage({ params, searchParams }: WorkListsPageProps) {
  const [{ programme }, { after }] = await Promise.all([params, searchParams]);
  const query = new URLSearchParams({ limit: '30', ...(after ? { after } : {}) });
  const [{ items, after: next }, { zone }, people, places, stands, taxa, { workLists: said }, t] = await Promise.all([
    readPart(`${apiOf(programme, 'work-lists')}?${query}`, z.array(WorkListInList)), workplaceOf(programme),
    peopleOf(programme), placesOf(programme), standsOf(programme), taxaOf(programme), getMessages(), getTranslations('workLists'),
  ]);
  const whereOf = ({ asked }: WorkListInList) => [
    asked.placeId === null ? said.everywhere : nameIn(places, asked.placeId), asked.standId && nameIn(stands, asked.standId), asked.taxonId && taxonName(taxa, asked.taxonId),
  ].filter(Boolean).join(', ');
  return (
    <ListPage
      title={said.title}
      lead={said.lead}
      empty={said.empty}
      add={{ href: pageOf(programme, 'work-lists', 'new'), words: said.make }}
      rows={items}
      keyOf={({ id }) => id}
      columns={[
        { head: said.columns.list, cell: (list) => <><RowLink href={pageOf(programme, 'work-lists', list.id)}>{said.kinds[list.kind]}</RowLink><span className="block text-sm font-normal text-ink-soft">{whereOf(list)}</span></> },
        { head: said.columns.made, cell: ({ madeAt }) => sayMoment(madeAt, zone) },
        { head: said.columns.by, cell: ({ madeBy }) => nameIn(people, madeBy) },
        { head: said.columns.typed, isNumber: true, cell: ({ lines, typed }) => t('typedOf', { typed, n: lines }) },
      ]}
    >
      {next && <div className="mt-6"><ButtonLink look="quiet" href={`?after=${encodeURIComponent(next)}`}>{said.more}</ButtonLink></div>}
    </ListPage>
  );
}

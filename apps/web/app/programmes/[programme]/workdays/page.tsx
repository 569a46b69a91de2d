import { Workday } from '@sprigline/contract';
import { getMessages } from 'next-intl/server';
import { z } from 'zod';
import { sayDay } from '../../../../lib/calendar.ts';
import { nameIn, placesOf } from '../../../../lib/lists.ts';
import { pageOf } from '../../../../lib/page-address.ts';
import { readPart } from '../../../../lib/pages.ts';
import { titled } from '../../../../lib/titled.ts';
import { apiOf } from '../../../../lib/workplace.ts';
import { ButtonLink } from '../../../../ui/button-link.tsx';
import { ListPage } from '../../../../ui/list-page.tsx';
import { RowLink } from '../../../../ui/row-link.tsx';

interface WorkdaysPageProps {
  readonly params: Promise<{ programme: string }>;
  readonly searchParams: Promise<{ after?: string }>;
}

export const generateMetadata = titled(({ workdays }) => workdays.title);

export default async function WorkdaysPage({ params, searchParams }: WorkdaysPageProps) {
  const { programme } = await params;
  const { after } = await searchParams;
  const query = new URLSearchParams(after ? { after } : {});
  const [{ items: workdays, after: next }, places, { workdays: said }] = await Promise.all([
    readPart(`${apiOf(programme, 'workdays')}?${query}`, z.array(Workday)), placesOf(programme), getMessages(),
  ]);
  return (
    <ListPage
      title={said.title}
      lead={said.lead}
      empty={said.empty}
      add={{ href: pageOf(programme, 'workdays', 'new'), words: said.add }}
      rows={workdays}
      keyOf={({ id }) => id}
      columns={[
        { head: said.fields.day, cell: ({ id, day }) => <RowLink href={pageOf(programme, 'workdays', id)}>{sayDay(day)}</RowLink> },
        { head: said.fields.placeId, cell: ({ placeId }) => placeId && nameIn(places, placeId) },
        { head: said.fields.tasks, cell: ({ tasks }) => tasks },
        { head: said.people, isNumber: true, cell: ({ personIds, others, children }) => personIds.length + others + children },
        { head: said.fields.hours, isNumber: true, cell: ({ hours }) => hours },
        { head: said.entries, isNumber: true, cell: ({ entries }) => entries },
      ]}
    >
      {next && <div className="mt-6"><ButtonLink look="quiet" href={`?${new URLSearchParams({ after: next })}`}>{said.more}</ButtonLink></div>}
    </ListPage>
  );
}

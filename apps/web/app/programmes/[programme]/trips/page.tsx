import { TripInList } from '@sprigline/contract';
import { getMessages } from 'next-intl/server';
import { z } from 'zod';
import { sayDay } from '../../../../lib/calendar.ts';
import { nameIn, peopleOf, standsOf } from '../../../../lib/lists.ts';
import { pageOf } from '../../../../lib/page-address.ts';
import { readPart } from '../../../../lib/pages.ts';
import { titled } from '../../../../lib/titled.ts';
import { apiOf, workplaceOf } from '../../../../lib/workplace.ts';
import { ButtonLink } from '../../../../ui/button-link.tsx';
import { ListPage } from '../../../../ui/list-page.tsx';
import { RowLink } from '../../../../ui/row-link.tsx';

interface TripsPageProps {
  readonly params: Promise<{ programme: string }>;
  readonly searchParams: Promise<{ after?: string }>;
}

export const generateMetadata = titled(({ trips }) => trips.title);

export default async function TripsPage({ params, searchParams }: TripsPageProps) {
  const { programme } = await params;
  const { after } = await searchParams;
  const query = new URLSearchParams(after ? { after } : {});
  const [{ role }, { items: trips, after: next }, stands, people, { trips: said }] = await Promise.all([
    workplaceOf(programme), readPart(`${apiOf(programme, 'trips')}?${query}`, z.array(TripInList)), standsOf(programme), peopleOf(programme), getMessages(),
  ]);
  return (
    <ListPage
      title={said.title}
      lead={said.lead}
      empty={said.empty}
      add={role === 'partner' ? undefined : { href: pageOf(programme, 'trips', 'new'), words: said.add }}
      rows={trips}
      keyOf={({ id }) => id}
      columns={[
        { head: said.fields.wentOn, cell: ({ id, wentOn }) => <RowLink href={pageOf(programme, 'trips', id)}>{sayDay(wentOn)}</RowLink> },
        { head: said.fields.standId, cell: ({ standId }) => nameIn(stands, standId) },
        { head: said.fields.ledBy, cell: ({ ledBy }) => ledBy && nameIn(people, ledBy) },
        { head: said.trees, isNumber: true, cell: ({ donorTrees }) => donorTrees },
        { head: said.fields.cuttings, isNumber: true, cell: ({ cuttings }) => cuttings },
      ]}
    >
      {next && <div className="mt-6"><ButtonLink look="quiet" href={`?${new URLSearchParams({ after: next })}`}>{said.more}</ButtonLink></div>}
    </ListPage>
  );
}

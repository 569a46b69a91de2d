import type { Trip } from '@sprigline/contract';
import { getMessages } from 'next-intl/server';
import { sayDay } from '../../lib/calendar.ts';
import { nameIn } from '../../lib/lists.ts';
import { pageOf } from '../../lib/page-address.ts';
import { Facts } from '../../ui/facts.tsx';
import { RowLink } from '../../ui/row-link.tsx';
import { tripChoices } from './trip-choices.ts';

export async function TripFacts({ programme, trip }: { programme: string; trip: Trip }) {
  const [{ stands, people, permissions }, { trips: said }] = await Promise.all([tripChoices(programme), getMessages()]);
  const permission = permissions.find(({ id }) => id === trip.permissionId);
  return (
    <Facts
      facts={[
        { term: said.fields.wentOn, says: sayDay(trip.wentOn, 'long') },
        { term: said.fields.standId, says: <RowLink href={pageOf(programme, 'stands', trip.standId)}>{nameIn(stands, trip.standId)}</RowLink> },
        // Not shown at all to those who may not read permissions.
        ...(permissions.length === 0 ? [] : [{ term: said.fields.permissionId, says: permission && <RowLink href={pageOf(programme, 'permissions', permission.id)}>{permission.land}</RowLink> }]),
        { term: said.fields.ledBy, says: trip.ledBy && nameIn(people, trip.ledBy) },
        { term: said.fields.people, says: trip.people },
      ]}
    />
  );
}

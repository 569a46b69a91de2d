import { Trip } from '@sprigline/contract';
import { getMessages, getTranslations } from 'next-intl/server';
import { changeTrip } from '../../../../../../features/trip/change-trip.action.ts';
import { tripChoices } from '../../../../../../features/trip/trip-choices.ts';
import { TripFields } from '../../../../../../features/trip/trip-fields.tsx';
import { sayDay } from '../../../../../../lib/calendar.ts';
import { nameIn } from '../../../../../../lib/lists.ts';
import { pageOf } from '../../../../../../lib/page-address.ts';
import { readVersion } from '../../../../../../lib/read.ts';
import { titled } from '../../../../../../lib/titled.ts';
import { apiOf } from '../../../../../../lib/workplace.ts';
import { FormPage } from '../../../../../../ui/form/form-page.tsx';

export const generateMetadata = titled(({ trips }) => trips.change);

export default async function ChangeTripPage({ params }: { params: Promise<{ programme: string; id: string }> }) {
  const { programme, id } = await params;
  const [{ body: trip, etag }, choices, { trips: said }, t] = await Promise.all([readVersion(apiOf(programme, 'trips', id), Trip), tripChoices(programme), getMessages(), getTranslations('trips')]);
  const name = t('name', { stand: nameIn(choices.stands, trip.standId), day: sayDay(trip.wentOn) });
  return (
    <FormPage
      trail={[{ href: pageOf(programme, 'trips'), words: said.title }, { href: pageOf(programme, 'trips', id), words: name }]}
      title={t('changeTitle', { name })}
      action={changeTrip.bind(null, programme, id, etag)}
      labels={said.fields}
      send={said.save}
    >
      <TripFields trip={trip} {...choices} />
    </FormPage>
  );
}

import { getMessages } from 'next-intl/server';
import { addTrip } from '../../../../../features/trip/add-trip.action.ts';
import { tripChoices } from '../../../../../features/trip/trip-choices.ts';
import { TripFields } from '../../../../../features/trip/trip-fields.tsx';
import { newId } from '../../../../../lib/new-id.ts';
import { pageOf } from '../../../../../lib/page-address.ts';
import { titled } from '../../../../../lib/titled.ts';
import { FormPage } from '../../../../../ui/form/form-page.tsx';
import { ProseField } from '../../../../../ui/form/prose-field.tsx';

export const generateMetadata = titled(({ trips }) => trips.addTitle);

export default async function NewTripPage({ params }: { params: Promise<{ programme: string }> }) {
  const { programme } = await params;
  const [{ trips: said }, choices] = await Promise.all([getMessages(), tripChoices(programme)]);
  return (
    <FormPage
      trail={[{ href: pageOf(programme, 'trips'), words: said.title }]}
      title={said.addTitle}
      action={addTrip.bind(null, programme)}
      labels={said.fields}
      send={said.next}
      newId={newId()}
    >
      <TripFields {...choices} />
      <ProseField name="note" isOptional hint={said.hints.note} />
    </FormPage>
  );
}

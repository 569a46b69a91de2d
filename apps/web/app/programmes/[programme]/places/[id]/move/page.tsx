import { Place } from '@sprigline/contract';
import { getMessages, getTranslations } from 'next-intl/server';
import { movePlace } from '../../../../../../features/place/move-place.action.ts';
import { mayHold } from '../../../../../../features/place/place-fields.tsx';
import { pathTo, placeChoices } from '../../../../../../lib/place-path.ts';
import { placesOf } from '../../../../../../lib/lists.ts';
import { newId } from '../../../../../../lib/new-id.ts';
import { pageOf } from '../../../../../../lib/page-address.ts';
import { read } from '../../../../../../lib/read.ts';
import { titled } from '../../../../../../lib/titled.ts';
import { apiOf, workplaceOf } from '../../../../../../lib/workplace.ts';
import { ChoiceField } from '../../../../../../ui/form/choice-field.tsx';
import { DayField } from '../../../../../../ui/form/day-field.tsx';
import { FormPage } from '../../../../../../ui/form/form-page.tsx';

export const generateMetadata = titled(({ places }) => places.move);

export default async function MovePlacePage({ params }: { params: Promise<{ programme: string; id: string }> }) {
  const { programme, id } = await params;
  const [place, places, { today }, { places: said }, t] = await Promise.all([
    read(apiOf(programme, 'places', id), Place), placesOf(programme), workplaceOf(programme), getMessages(), getTranslations('places'),
  ]);
  const elsewhere = placeChoices(places, (other) => mayHold(other) && other.id !== place.parentId && !pathTo(places, other.id).some((step) => step.id === id));
  return (
    <FormPage
      trail={[{ href: pageOf(programme, 'places'), words: said.title }, { href: pageOf(programme, 'places', id), words: place.name }]}
      title={t('moveTitle', { name: place.name })}
      lead={said.moveLead}
      action={movePlace.bind(null, programme, id)}
      labels={said.fields}
      send={said.moveSend}
      newId={newId()}
    >
      <ChoiceField name="toPlaceId" choices={elsewhere} />
      <DayField name="movedOn" today={today} />
    </FormPage>
  );
}

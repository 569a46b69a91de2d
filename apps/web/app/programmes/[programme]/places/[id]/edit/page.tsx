import { Place } from '@sprigline/contract';
import { getMessages, getTranslations } from 'next-intl/server';
import { changePlace } from '../../../../../../features/place/change-place.action.ts';
import { PlaceFields } from '../../../../../../features/place/place-fields.tsx';
import { partnersOf } from '../../../../../../lib/lists.ts';
import { pageOf } from '../../../../../../lib/page-address.ts';
import { readVersion } from '../../../../../../lib/read.ts';
import { titled } from '../../../../../../lib/titled.ts';
import { apiOf } from '../../../../../../lib/workplace.ts';
import { FormPage } from '../../../../../../ui/form/form-page.tsx';

export const generateMetadata = titled(({ places }) => places.change);

export default async function ChangePlacePage({ params }: { params: Promise<{ programme: string; id: string }> }) {
  const { programme, id } = await params;
  const [{ body: place, etag }, partners, { places: said }, t] = await Promise.all([readVersion(apiOf(programme, 'places', id), Place), partnersOf(programme), getMessages(), getTranslations('places')]);
  return (
    <FormPage
      trail={[{ href: pageOf(programme, 'places'), words: said.title }, { href: pageOf(programme, 'places', id), words: place.name }]}
      title={t('changeTitle', { name: place.name })}
      action={changePlace.bind(null, programme, id, etag)}
      labels={said.fields}
      send={said.save}
    >
      <PlaceFields place={place} partners={partners} />
    </FormPage>
  );
}

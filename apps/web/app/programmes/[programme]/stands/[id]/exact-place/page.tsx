import { ExactPlace, Stand } from '@sprigline/contract';
import { getMessages, getTranslations } from 'next-intl/server';
import { ExactPlaceFields } from '../../../../../../features/exact-place/exact-place-fields.tsx';
import { saveExactPlace } from '../../../../../../features/exact-place/save-exact-place.action.ts';
import { pageOf } from '../../../../../../lib/page-address.ts';
import { read } from '../../../../../../lib/read.ts';
import { readIfAllowed } from '../../../../../../lib/read-if-allowed.ts';
import { titled } from '../../../../../../lib/titled.ts';
import { apiOf } from '../../../../../../lib/workplace.ts';
import { FormPage } from '../../../../../../ui/form/form-page.tsx';

export const generateMetadata = titled(({ exactPlace }) => exactPlace.title);

export default async function ExactPlacePage({ params }: { params: Promise<{ programme: string; id: string }> }) {
  const { programme, id } = await params;
  const [stand, place, { exactPlace: said, stands: parent }, t] = await Promise.all([
    read(apiOf(programme, 'stands', id), Stand),
    readIfAllowed(apiOf(programme, 'stands', id, 'exact-place'), ExactPlace),
    getMessages(),
    getTranslations('exactPlace'),
  ]);
  const name = stand.name;
  return (
    <FormPage
      trail={[{ href: pageOf(programme, 'stands'), words: parent.title }, { href: pageOf(programme, 'stands', id), words: name }]}
      title={t('formTitle', { name })}
      lead={said.lead}
      action={saveExactPlace.bind(null, programme, 'stands', id, place?.etag ?? '')}
      labels={said.fields}
      send={said.save}
    >
      <ExactPlaceFields place={place?.body} />
    </FormPage>
  );
}

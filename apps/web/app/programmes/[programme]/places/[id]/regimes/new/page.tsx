import { Place, Regimes } from '@sprigline/contract';
import { getMessages, getTranslations } from 'next-intl/server';
import { addRegime } from '../../../../../../../features/regime/add-regime.action.ts';
import { RegimeFields } from '../../../../../../../features/regime/regime-fields.tsx';
import { newId } from '../../../../../../../lib/new-id.ts';
import { pageOf } from '../../../../../../../lib/page-address.ts';
import { read } from '../../../../../../../lib/read.ts';
import { titled } from '../../../../../../../lib/titled.ts';
import { apiOf, workplaceOf } from '../../../../../../../lib/workplace.ts';
import { FormPage } from '../../../../../../../ui/form/form-page.tsx';

export const generateMetadata = titled(({ regimes }) => regimes.title);

export default async function NewRegimePage({ params }: { params: Promise<{ programme: string; id: string }> }) {
  const { programme, id } = await params;
  const [place, { now }, { today }, { regimes: said, places }, t] = await Promise.all([
    read(apiOf(programme, 'places', id), Place), read(apiOf(programme, 'places', id, 'regimes'), Regimes), workplaceOf(programme), getMessages(), getTranslations('regimes'),
  ]);
  return (
    <FormPage
      trail={[{ href: pageOf(programme, 'places'), words: places.title }, { href: pageOf(programme, 'places', id), words: place.name }]}
      title={t('addTitle', { name: place.name })}
      lead={said.addLead}
      action={addRegime.bind(null, programme, id)}
      labels={said.fields}
      send={said.save}
      newId={newId()}
    >
      <RegimeFields today={today} regime={now ?? undefined} />
    </FormPage>
  );
}

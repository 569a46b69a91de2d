import { Place, Regime } from '@sprigline/contract';
import { getMessages, getTranslations } from 'next-intl/server';
import { changeRegime } from '../../../../../../../features/regime/change-regime.action.ts';
import { RegimeFields } from '../../../../../../../features/regime/regime-fields.tsx';
import { pageOf } from '../../../../../../../lib/page-address.ts';
import { read, readVersion } from '../../../../../../../lib/read.ts';
import { titled } from '../../../../../../../lib/titled.ts';
import { apiOf, workplaceOf } from '../../../../../../../lib/workplace.ts';
import { FormPage } from '../../../../../../../ui/form/form-page.tsx';

export const generateMetadata = titled(({ regimes }) => regimes.title);

export default async function ChangeRegimePage({ params }: { params: Promise<{ programme: string; id: string; regimeId: string }> }) {
  const { programme, id, regimeId } = await params;
  const [place, { body: regime, etag }, { today }, { regimes: said, places }, t] = await Promise.all([
    read(apiOf(programme, 'places', id), Place), readVersion(apiOf(programme, 'regimes', regimeId), Regime), workplaceOf(programme), getMessages(), getTranslations('regimes'),
  ]);
  return (
    <FormPage
      trail={[{ href: pageOf(programme, 'places'), words: places.title }, { href: pageOf(programme, 'places', id), words: place.name }]}
      title={t('changeTitle', { name: place.name })}
      lead={said.changeLead}
      action={changeRegime.bind(null, programme, id, regimeId, etag)}
      labels={said.fields}
      send={said.save}
    >
      <RegimeFields today={today} regime={regime} fromDay={regime.fromDay} />
    </FormPage>
  );
}

import { Stand } from '@sprigline/contract';
import { getMessages, getTranslations } from 'next-intl/server';
import { changeStand } from '../../../../../../features/stand/change-stand.action.ts';
import { StandFields } from '../../../../../../features/stand/stand-fields.tsx';
import { partnersOf } from '../../../../../../lib/lists.ts';
import { pageOf } from '../../../../../../lib/page-address.ts';
import { readVersion } from '../../../../../../lib/read.ts';
import { titled } from '../../../../../../lib/titled.ts';
import { apiOf } from '../../../../../../lib/workplace.ts';
import { FormPage } from '../../../../../../ui/form/form-page.tsx';

export const generateMetadata = titled(({ stands }) => stands.change);

export default async function ChangeStandPage({ params }: { params: Promise<{ programme: string; id: string }> }) {
  const { programme, id } = await params;
  const [{ body: stand, etag }, { stands: said }, t, partners] = await Promise.all([
    readVersion(apiOf(programme, 'stands', id), Stand), getMessages(), getTranslations('stands'), partnersOf(programme),
  ]);
  const name = stand.name;
  return (
    <FormPage
      trail={[{ href: pageOf(programme, 'stands'), words: said.title }, { href: pageOf(programme, 'stands', id), words: name }]}
      title={t('changeTitle', { name })}
      action={changeStand.bind(null, programme, id, etag)}
      labels={said.fields}
      send={said.save}
    >
      <StandFields stand={stand} partners={partners} />
    </FormPage>
  );
}

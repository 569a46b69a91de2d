import { Site } from '@sprigline/contract';
import { getMessages, getTranslations } from 'next-intl/server';
import { changeSite } from '../../../../../../features/site/change-site.action.ts';
import { SiteFields } from '../../../../../../features/site/site-fields.tsx';
import { partnersOf } from '../../../../../../lib/lists.ts';
import { pageOf } from '../../../../../../lib/page-address.ts';
import { readVersion } from '../../../../../../lib/read.ts';
import { titled } from '../../../../../../lib/titled.ts';
import { apiOf } from '../../../../../../lib/workplace.ts';
import { FormPage } from '../../../../../../ui/form/form-page.tsx';

export const generateMetadata = titled(({ sites }) => sites.change);

export default async function ChangeSitePage({ params }: { params: Promise<{ programme: string; id: string }> }) {
  const { programme, id } = await params;
  const [{ body: site, etag }, { sites: said }, t, partners] = await Promise.all([
    readVersion(apiOf(programme, 'sites', id), Site), getMessages(), getTranslations('sites'), partnersOf(programme),
  ]);
  const name = site.name;
  return (
    <FormPage
      trail={[{ href: pageOf(programme, 'sites'), words: said.title }, { href: pageOf(programme, 'sites', id), words: name }]}
      title={t('changeTitle', { name })}
      action={changeSite.bind(null, programme, id, etag)}
      labels={said.fields}
      send={said.save}
    >
      <SiteFields site={site} partners={partners} />
    </FormPage>
  );
}

import { getMessages } from 'next-intl/server';
import { addSite } from '../../../../../features/site/add-site.action.ts';
import { SiteFields } from '../../../../../features/site/site-fields.tsx';
import { partnersOf } from '../../../../../lib/lists.ts';
import { newId } from '../../../../../lib/new-id.ts';
import { pageOf } from '../../../../../lib/page-address.ts';
import { titled } from '../../../../../lib/titled.ts';
import { FormPage } from '../../../../../ui/form/form-page.tsx';

export const generateMetadata = titled(({ sites }) => sites.addTitle);

export default async function NewSitePage({ params }: { params: Promise<{ programme: string }> }) {
  const { programme } = await params;
  const [{ sites: said }, partners] = await Promise.all([getMessages(), partnersOf(programme)]);
  return (
    <FormPage
      trail={[{ href: pageOf(programme, 'sites'), words: said.title }]}
      title={said.addTitle}
      action={addSite.bind(null, programme)}
      labels={said.fields}
      send={said.save}
      newId={newId()}
    >
      <SiteFields partners={partners} />
    </FormPage>
  );
}

import { getMessages } from 'next-intl/server';
import { addStand } from '../../../../../features/stand/add-stand.action.ts';
import { StandFields } from '../../../../../features/stand/stand-fields.tsx';
import { partnersOf } from '../../../../../lib/lists.ts';
import { newId } from '../../../../../lib/new-id.ts';
import { pageOf } from '../../../../../lib/page-address.ts';
import { titled } from '../../../../../lib/titled.ts';
import { FormPage } from '../../../../../ui/form/form-page.tsx';

export const generateMetadata = titled(({ stands }) => stands.addTitle);

export default async function NewStandPage({ params }: { params: Promise<{ programme: string }> }) {
  const { programme } = await params;
  const [{ stands: said }, partners] = await Promise.all([getMessages(), partnersOf(programme)]);
  return (
    <FormPage
      trail={[{ href: pageOf(programme, 'stands'), words: said.title }]}
      title={said.addTitle}
      action={addStand.bind(null, programme)}
      labels={said.fields}
      send={said.save}
      newId={newId()}
    >
      <StandFields partners={partners} />
    </FormPage>
  );
}

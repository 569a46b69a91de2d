import { getMessages } from 'next-intl/server';
import { addPartner } from '../../../../../features/partner/add-partner.action.ts';
import { PartnerFields } from '../../../../../features/partner/partner-fields.tsx';
import { titled } from '../../../../../lib/titled.ts';
import { workplaceOf } from '../../../../../lib/workplace.ts';
import { newId } from '../../../../../lib/new-id.ts';
import { pageOf } from '../../../../../lib/page-address.ts';
import { FormPage } from '../../../../../ui/form/form-page.tsx';

export const generateMetadata = titled(({ partners }) => partners.addTitle);

export default async function NewPartnerPage({ params }: { params: Promise<{ programme: string }> }) {
  const { programme } = await params;
  const [{ partners: said }, { today }] = await Promise.all([getMessages(), workplaceOf(programme)]);
  return (
    <FormPage
      trail={[{ href: pageOf(programme, 'partners'), words: said.title }]}
      title={said.addTitle}
      action={addPartner.bind(null, programme)}
      labels={said.fields}
      send={said.save}
      newId={newId()}
    >
      <PartnerFields today={today} />
    </FormPage>
  );
}

import { Partner } from '@sprigline/contract';
import { getMessages, getTranslations } from 'next-intl/server';
import { changePartner } from '../../../../../../features/partner/change-partner.action.ts';
import { PartnerFields } from '../../../../../../features/partner/partner-fields.tsx';
import { pageOf } from '../../../../../../lib/page-address.ts';
import { readVersion } from '../../../../../../lib/read.ts';
import { titled } from '../../../../../../lib/titled.ts';
import { apiOf, workplaceOf } from '../../../../../../lib/workplace.ts';
import { FormPage } from '../../../../../../ui/form/form-page.tsx';

export const generateMetadata = titled(({ partners }) => partners.change);

export default async function ChangePartnerPage({ params }: { params: Promise<{ programme: string; id: string }> }) {
  const { programme, id } = await params;
  const [{ body: partner, etag }, { partners: said }, t, { today }] = await Promise.all([
    readVersion(apiOf(programme, 'partners', id), Partner), getMessages(), getTranslations('partners'), workplaceOf(programme),
  ]);
  const name = partner.name;
  return (
    <FormPage
      trail={[{ href: pageOf(programme, 'partners'), words: said.title }, { href: pageOf(programme, 'partners', id), words: name }]}
      title={t('changeTitle', { name })}
      action={changePartner.bind(null, programme, id, etag)}
      labels={said.fields}
      send={said.save}
    >
      <PartnerFields partner={partner} today={today} />
    </FormPage>
  );
}

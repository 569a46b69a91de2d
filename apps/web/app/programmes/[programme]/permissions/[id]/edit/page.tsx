import { Permission } from '@sprigline/contract';
import { getMessages, getTranslations } from 'next-intl/server';
import { changePermission } from '../../../../../../features/permission/change-permission.action.ts';
import { PermissionFields } from '../../../../../../features/permission/permission-fields.tsx';
import { standsOf, taxaOf } from '../../../../../../lib/lists.ts';
import { pageOf } from '../../../../../../lib/page-address.ts';
import { readVersion } from '../../../../../../lib/read.ts';
import { titled } from '../../../../../../lib/titled.ts';
import { apiOf, workplaceOf } from '../../../../../../lib/workplace.ts';
import { FormPage } from '../../../../../../ui/form/form-page.tsx';

export const generateMetadata = titled(({ permissions }) => permissions.change);

export default async function ChangePermissionPage({ params }: { params: Promise<{ programme: string; id: string }> }) {
  const { programme, id } = await params;
  const [{ body: permission, etag }, { permissions: said }, t, stands, taxa, { today }] = await Promise.all([
    readVersion(apiOf(programme, 'permissions', id), Permission), getMessages(), getTranslations('permissions'), standsOf(programme), taxaOf(programme), workplaceOf(programme),
  ]);
  const name = permission.land;
  return (
    <FormPage
      trail={[{ href: pageOf(programme, 'permissions'), words: said.title }, { href: pageOf(programme, 'permissions', id), words: name }]}
      title={t('changeTitle', { name })}
      action={changePermission.bind(null, programme, id, etag)}
      labels={said.fields}
      send={said.save}
    >
      <PermissionFields permission={permission} stands={stands} taxa={taxa} today={today} />
    </FormPage>
  );
}

import { getMessages } from 'next-intl/server';
import { addPermission } from '../../../../../features/permission/add-permission.action.ts';
import { PermissionFields } from '../../../../../features/permission/permission-fields.tsx';
import { standsOf, taxaOf } from '../../../../../lib/lists.ts';
import { titled } from '../../../../../lib/titled.ts';
import { workplaceOf } from '../../../../../lib/workplace.ts';
import { newId } from '../../../../../lib/new-id.ts';
import { pageOf } from '../../../../../lib/page-address.ts';
import { FormPage } from '../../../../../ui/form/form-page.tsx';

export const generateMetadata = titled(({ permissions }) => permissions.addTitle);

export default async function NewPermissionPage({ params }: { params: Promise<{ programme: string }> }) {
  const { programme } = await params;
  const [{ permissions: said }, stands, taxa, { today }] = await Promise.all([getMessages(), standsOf(programme), taxaOf(programme), workplaceOf(programme)]);
  return (
    <FormPage
      trail={[{ href: pageOf(programme, 'permissions'), words: said.title }]}
      title={said.addTitle}
      action={addPermission.bind(null, programme)}
      labels={said.fields}
      send={said.save}
      newId={newId()}
    >
      <PermissionFields stands={stands} taxa={taxa} today={today} />
    </FormPage>
  );
}

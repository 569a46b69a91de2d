import { getMessages } from 'next-intl/server';
import { addDonorTree } from '../../../../../features/donor-tree/add-donor-tree.action.ts';
import { DonorTreeFields } from '../../../../../features/donor-tree/donor-tree-fields.tsx';
import { standsOf, taxaOf } from '../../../../../lib/lists.ts';
import { workplaceOf } from '../../../../../lib/workplace.ts';
import { newId } from '../../../../../lib/new-id.ts';
import { pageOf } from '../../../../../lib/page-address.ts';
import { FormPage } from '../../../../../ui/form/form-page.tsx';

export default async function NewDonorTreePage({ params }: { params: Promise<{ programme: string }> }) {
  const { programme } = await params;
  const [{ donorTrees: said }, stands, taxa, { today }] = await Promise.all([getMessages(), standsOf(programme), taxaOf(programme), workplaceOf(programme)]);
  return (
    <FormPage
      trail={[{ href: pageOf(programme, 'donor-trees'), words: said.title }]}
      title={said.addTitle}
      action={addDonorTree.bind(null, programme)}
      labels={said.fields}
      send={said.save}
      newId={newId()}
    >
      <DonorTreeFields stands={stands} taxa={taxa} today={today} />
    </FormPage>
  );
}

import { DonorTree } from '@sprigline/contract';
import { getMessages, getTranslations } from 'next-intl/server';
import { changeDonorTree } from '../../../../../../features/donor-tree/change-donor-tree.action.ts';
import { DonorTreeFields } from '../../../../../../features/donor-tree/donor-tree-fields.tsx';
import { standsOf, taxaOf } from '../../../../../../lib/lists.ts';
import { pageOf } from '../../../../../../lib/page-address.ts';
import { readVersion } from '../../../../../../lib/read.ts';
import { titled } from '../../../../../../lib/titled.ts';
import { apiOf, workplaceOf } from '../../../../../../lib/workplace.ts';
import { FormPage } from '../../../../../../ui/form/form-page.tsx';

export const generateMetadata = titled(({ donorTrees }) => donorTrees.change);

export default async function ChangeDonorTreePage({ params }: { params: Promise<{ programme: string; id: string }> }) {
  const { programme, id } = await params;
  const [{ body: donorTree, etag }, { donorTrees: said }, t, stands, taxa, { today }] = await Promise.all([
    readVersion(apiOf(programme, 'donor-trees', id), DonorTree), getMessages(), getTranslations('donorTrees'), standsOf(programme), taxaOf(programme), workplaceOf(programme),
  ]);
  const name = donorTree.label;
  return (
    <FormPage
      trail={[{ href: pageOf(programme, 'donor-trees'), words: said.title }, { href: pageOf(programme, 'donor-trees', id), words: name }]}
      title={t('changeTitle', { name })}
      action={changeDonorTree.bind(null, programme, id, etag)}
      labels={said.fields}
      send={said.save}
    >
      <DonorTreeFields donorTree={donorTree} stands={stands} taxa={taxa} today={today} />
    </FormPage>
  );
}

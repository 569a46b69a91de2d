import { getMessages } from 'next-intl/server';
import { addDonorTree } from '../../../../../features/donor-tree/add-donor-tree.action.ts';
import { DonorTreeFields } from '../../../../../features/donor-tree/donor-tree-fields.tsx';
import { ExactPlaceFields } from '../../../../../features/exact-place/exact-place-fields.tsx';
import { standsOf, taxaOf } from '../../../../../lib/lists.ts';
import { newId } from '../../../../../lib/new-id.ts';
import { pageOf } from '../../../../../lib/page-address.ts';
import { titled } from '../../../../../lib/titled.ts';
import { workplaceOf } from '../../../../../lib/workplace.ts';
import { FormPage } from '../../../../../ui/form/form-page.tsx';
import { underPrefix } from '../../../../../ui/form/under-prefix.ts';

interface NewDonorTreePageProps {
  readonly params: Promise<{ programme: string }>;
  readonly searchParams: Promise<{ standId?: string }>;
}

export const generateMetadata = titled(({ donorTrees }) => donorTrees.addTitle);

export default async function NewDonorTreePage({ params, searchParams }: NewDonorTreePageProps) {
  const [{ programme }, { standId }] = await Promise.all([params, searchParams]);
  const [{ donorTrees: said, exactPlace }, stands, taxa, { today }] = await Promise.all([getMessages(), standsOf(programme), taxaOf(programme), workplaceOf(programme)]);
  return (
    <FormPage
      trail={[{ href: pageOf(programme, 'donor-trees'), words: said.title }]}
      title={said.addTitle}
      action={addDonorTree.bind(null, programme)}
      labels={{ ...said.fields, ...underPrefix('place/', exactPlace.fields) }}
      send={said.save}
      newId={newId()}
    >
      <DonorTreeFields stands={stands} taxa={taxa} today={today} standId={standId} />
      <details className="w-full max-w-prose rounded-md border-2 border-line p-4">
        <summary className="flex min-h-10 cursor-pointer items-center font-semibold">{exactPlace.tell}</summary>
        <p className="mt-2 mb-4 text-sm text-ink-soft">{exactPlace.lead}</p>
        <div className="grid gap-6">
          <ExactPlaceFields prefix="place/" isOptional />
        </div>
      </details>
    </FormPage>
  );
}

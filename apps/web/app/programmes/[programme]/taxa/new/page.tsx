import { getMessages } from 'next-intl/server';
import { addTaxon } from '../../../../../features/taxon/add-taxon.action.ts';
import { TaxonFields } from '../../../../../features/taxon/taxon-fields.tsx';
import { newId } from '../../../../../lib/new-id.ts';
import { pageOf } from '../../../../../lib/page-address.ts';
import { titled } from '../../../../../lib/titled.ts';
import { FormPage } from '../../../../../ui/form/form-page.tsx';

export const generateMetadata = titled(({ taxa }) => taxa.addTitle);

export default async function NewTaxonPage({ params }: { params: Promise<{ programme: string }> }) {
  const { programme } = await params;
  const { taxa: said } = await getMessages();
  return (
    <FormPage
      trail={[{ href: pageOf(programme, 'taxa'), words: said.title }]}
      title={said.addTitle}
      action={addTaxon.bind(null, programme)}
      labels={said.fields}
      send={said.save}
      newId={newId()}
    >
      <TaxonFields />
    </FormPage>
  );
}

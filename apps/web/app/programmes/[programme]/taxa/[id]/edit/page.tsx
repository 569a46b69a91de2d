import { Taxon } from '@sprigline/contract';
import { getMessages, getTranslations } from 'next-intl/server';
import { changeTaxon } from '../../../../../../features/taxon/change-taxon.action.ts';
import { TaxonFields } from '../../../../../../features/taxon/taxon-fields.tsx';
import { pageOf } from '../../../../../../lib/page-address.ts';
import { readVersion } from '../../../../../../lib/read.ts';
import { titled } from '../../../../../../lib/titled.ts';
import { apiOf } from '../../../../../../lib/workplace.ts';
import { FormPage } from '../../../../../../ui/form/form-page.tsx';

export const generateMetadata = titled(({ taxa }) => taxa.change);

export default async function ChangeTaxonPage({ params }: { params: Promise<{ programme: string; id: string }> }) {
  const { programme, id } = await params;
  const [{ body: taxon, etag }, { taxa: said }, t] = await Promise.all([readVersion(apiOf(programme, 'taxa', id), Taxon), getMessages(), getTranslations('taxa')]);
  const name = taxon.commonName ?? taxon.scientificName;
  return (
    <FormPage
      trail={[{ href: pageOf(programme, 'taxa'), words: said.title }, { href: pageOf(programme, 'taxa', id), words: name }]}
      title={t('changeTitle', { name })}
      action={changeTaxon.bind(null, programme, id, etag)}
      labels={said.fields}
      send={said.save}
    >
      <TaxonFields taxon={taxon} />
    </FormPage>
  );
}

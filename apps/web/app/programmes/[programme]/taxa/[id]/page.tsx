import { Taxon, TaxonDays as Days } from '@sprigline/contract';
import { getMessages, getTranslations } from 'next-intl/server';
import { z } from 'zod';
import { TaxonDays } from '../../../../../features/taxon/taxon-days.tsx';
import { pageOf } from '../../../../../lib/page-address.ts';
import { read } from '../../../../../lib/read.ts';
import { titled } from '../../../../../lib/titled.ts';
import { apiOf, workplaceOf } from '../../../../../lib/workplace.ts';
import { ButtonLink } from '../../../../../ui/button-link.tsx';
import { Facts } from '../../../../../ui/facts.tsx';
import { PageHeading } from '../../../../../ui/page-heading.tsx';
import { Species } from '../../../../../ui/species.tsx';
import { Trail } from '../../../../../ui/trail.tsx';

export const generateMetadata = titled(({ taxa }) => taxa.kind);

export default async function TaxonPage({ params }: { params: Promise<{ programme: string; id: string }> }) {
  const { programme, id } = await params;
  const [taxon, days, { isDesk }, { taxa: words, words: common }, t] = await Promise.all([
    read(apiOf(programme, 'taxa', id), Taxon), read(apiOf(programme, 'due', 'days'), z.array(Days)), workplaceOf(programme), getMessages(), getTranslations('taxa'),
  ]);
  return (
    <>
      <Trail steps={[{ href: pageOf(programme, 'taxa'), words: t('title') }]} />
      <PageHeading kind={t('kind')} act={isDesk && <ButtonLink look="quiet" href={pageOf(programme, 'taxa', id, 'edit')}>{t('change')}</ButtonLink>}>
        {taxon.commonName ?? <Species name={taxon.scientificName} />}
      </PageHeading>
      <Facts
        facts={[
          { term: words.fields.scientificName, says: <Species name={taxon.scientificName} /> },
          { term: words.fields.commonName, says: taxon.commonName },
          { term: words.fields.sensitivity, says: common.sensitivity[`${taxon.sensitivity as 0}`] },
        ]}
      />
      <div className="mt-10">{days.filter(({ taxonId }) => taxonId === id).map((of) => <TaxonDays key={of.taxonId} days={of} />)}</div>
    </>
  );
}

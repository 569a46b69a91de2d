import { Diversity, DonorHoldings, Funnels, ReadingChoices } from '@sprigline/contract';
import type { Metadata } from 'next';
import { getMessages, getTranslations } from 'next-intl/server';
import { notFound } from 'next/navigation';
import { FunnelKey } from '../../../../../../features/reading/funnel-key.tsx';
import { AsOf } from '../../../../../../features/reading/as-of.tsx';
import { FilterForm } from '../../../../../../features/reading/filter-form.tsx';
import { FunnelFigure } from '../../../../../../features/reading/funnel-figure.tsx';
import { GenesTable } from '../../../../../../features/reading/genes-table.tsx';
import { HoldingsTable } from '../../../../../../features/reading/holdings-table.tsx';
import { LossesTable } from '../../../../../../features/reading/losses-table.tsx';
import { RatesFigure } from '../../../../../../features/reading/rates-figure.tsx';
import { chosenIn, FILTERS, queryOf, type Search } from '../../../../../../features/reading/reading-address.ts';
import { pageOf } from '../../../../../../lib/page-address.ts';
import { read } from '../../../../../../lib/read.ts';
import { apiOf } from '../../../../../../lib/workplace.ts';
import { PageHeading } from '../../../../../../ui/page-heading.tsx';
import { Section } from '../../../../../../ui/section.tsx';
import { Species } from '../../../../../../ui/species.tsx';
import { Trail } from '../../../../../../ui/trail.tsx';

export async function generateMetadata(): Promise<Metadata> {
  return { title: (await getTranslations('readings'))('title') };
}

/** As many as a page can show; the CSV has them all. */
const FEWEST = 20;

export default async function StandReadingPage({ params, searchParams }: { params: Promise<{ programme: string; standId: string }>; searchParams: Promise<Search> }) {
  const { programme, standId } = await params;
  const chosen = { ...chosenIn(await searchParams), standId };
  const query = queryOf(chosen);
  const [funnels, diversity, holdings, choices, { readings: said }, t] = await Promise.all([
    read(`${apiOf(programme, 'readings', 'funnels')}${query}&by=stand`, Funnels),
    read(`${apiOf(programme, 'readings', 'diversity')}${query}`, Diversity),
    read(`${apiOf(programme, 'readings', 'donors')}${query}`, DonorHoldings),
    read(apiOf(programme, 'readings', 'choices'), ReadingChoices),
    getMessages(),
    getTranslations('readings.stand'),
  ]);
  const name = diversity.stands[0]?.stand ?? funnels.groups[0]?.name;
  if (name === undefined) notFound();
  return (
    <>
      <Trail steps={[{ href: pageOf(programme, 'readings'), words: said.title }]} />
      <PageHeading kind={said.stand.kind}>{name}</PageHeading>
      <FilterForm choices={choices} chosen={chosen} here={pageOf(programme, 'readings', 'stands', standId)} names={FILTERS.filter((name) => name !== 'standId')} />
      <AsOf {...funnels} />
      {funnels.groups.length === 0 && <p className="mb-10">{said.nothingChosen}</p>}
      {funnels.groups.map((group) => (
        <div key={group.key}>
          <Section heading={group.taxon ? <Species name={group.taxon} /> : name}>
            <FunnelKey />
            <FunnelFigure name={name} group={group} csv={`${apiOf(programme, 'readings', 'funnels.csv')}${queryOf({ ...chosen, by: 'stand', ...(group.taxonId && { taxonId: group.taxonId }) })}`} />
          </Section>
          <Section heading={said.stand.rates} lead={said.stand.ratesLead}><RatesFigure about={group.taxon ?? name} stages={group.stages} /></Section>
          <Section heading={said.stand.lost} lead={said.stand.lostLead}><LossesTable about={group.taxon ?? name} stages={group.stages} /></Section>
        </div>
      ))}
      {diversity.stands.map((stand) => (
        <Section key={stand.taxonId} heading={diversity.stands.length > 1 ? t('genesOf', { taxon: stand.taxon }) : said.stand.genes} lead={said.stand.genesLead}><GenesTable stand={stand} /></Section>
      ))}
      {holdings.donors.length > 0 && (
        <Section heading={said.stand.fewest} lead={said.stand.fewestLead}>
          <HoldingsTable programme={programme} donors={holdings.donors.slice(0, FEWEST)} caption={said.stand.fewest} isStandHidden />
        </Section>
      )}
    </>
  );
}

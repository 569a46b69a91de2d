import { Diversity, DonorHoldings, Forecast, Funnels, ReadingChoices, RootingCurves, TimeAxis } from '@sprigline/contract';
import type { Metadata } from 'next';
import { getMessages } from 'next-intl/server';
import { notFound } from 'next/navigation';
import { ForecastFigures } from '../../../../../../features/forecast/forecast-figure.tsx';
import { AsOf } from '../../../../../../features/reading/as-of.tsx';
import { ChosenWords } from '../../../../../../features/reading/chosen-words.tsx';
import { FilterForm } from '../../../../../../features/reading/filter-form.tsx';
import { chosenIn, FILTERS, queryOf, type Search } from '../../../../../../features/reading/reading-address.ts';
import { SpeciesReading } from '../../../../../../features/reading/species-reading.tsx';
import { speciesOf } from '../../../../../../features/reading/species-of.ts';
import { TimeFigure } from '../../../../../../features/reading/time-figure.tsx';
import { RootingFigure } from '../../../../../../features/time-to-root/rooting-figure.tsx';
import { pageOf } from '../../../../../../lib/page-address.ts';
import { read } from '../../../../../../lib/read.ts';
import { apiOf, workplaceOf } from '../../../../../../lib/workplace.ts';
import { PageHeading } from '../../../../../../ui/page-heading.tsx';
import { Section } from '../../../../../../ui/section.tsx';
import { Species } from '../../../../../../ui/species.tsx';
import { Trail } from '../../../../../../ui/trail.tsx';

interface StandReadingProps {
  readonly params: Promise<{ programme: string; standId: string }>;
  readonly searchParams: Promise<Search>;
}

export async function generateMetadata({ params }: StandReadingProps): Promise<Metadata> {
  const { programme, standId } = await params;
  const [{ stands }, { readings: said }] = await Promise.all([read(apiOf(programme, 'readings', 'choices'), ReadingChoices), getMessages()]);
  return { title: [stands.find(({ id }) => id === standId)?.name, said.title].filter(Boolean).join(': ') };
}

export default async function StandReadingPage({ params, searchParams }: StandReadingProps) {
  const { programme, standId } = await params;
  const search = await searchParams;
  const chosen = { ...chosenIn(search), standId };
  const query = queryOf(chosen);
  const isPartner = (await workplaceOf(programme)).role === 'partner';
  const [funnels, diversity, holdings, choices, axis, curves, forecast, { readings: said, dashboards: { time }, timeToRoot, forecast: ahead }] = await Promise.all([
    read(`${apiOf(programme, 'readings', 'funnels')}${query}&by=stand`, Funnels),
    read(`${apiOf(programme, 'readings', 'diversity')}${query}`, Diversity),
    // Both tell of benches, which are for the house.
    isPartner ? undefined : read(`${apiOf(programme, 'readings', 'donors')}${query}&limit=200`, DonorHoldings),
    read(apiOf(programme, 'readings', 'choices'), ReadingChoices),
    isPartner ? undefined : read(`${apiOf(programme, 'readings', 'time-axis')}${query}`, TimeAxis),
    isPartner ? undefined : read(`${apiOf(programme, 'readings', 'time-to-root')}${query}&by=stand`, RootingCurves),
    isPartner ? undefined : read(`${apiOf(programme, 'readings', 'forecast')}${query}`, Forecast),
    getMessages(),
  ]);
  const name = choices.stands.find(({ id }) => id === standId)?.name;
  if (name === undefined) notFound();
  const species = speciesOf(funnels, diversity, holdings ?? { donors: [] });
  return (
    <>
      <Trail steps={[{ href: `${pageOf(programme, 'readings')}${queryOf(chosenIn(search))}`, words: said.title }]} />
      <PageHeading kind={said.stand.kind}>{name}</PageHeading>
      <FilterForm choices={choices} chosen={chosen} here={pageOf(programme, 'readings', 'stands', standId)} names={FILTERS.filter((filter) => filter !== 'standId' && !(isPartner && (filter === 'placeId' || filter === 'recipeId')))} />
      <ChosenWords choices={choices} chosen={chosen} />
      <AsOf {...funnels} />
      {funnels.groups.length === 0 && <p className="mb-10">{Object.keys(chosen).length > 1 ? said.nothingChosen : said.stand.nothing}</p>}
      {species.map(({ taxonId, taxon, commonName, ...parts }) => (
        <article key={taxonId} className="mb-16">
          <h2 className="mb-4 text-2xl">
            {commonName && `${commonName}, `}
            <Species name={taxon} />
          </h2>
          <SpeciesReading programme={programme} stand={name} isOneOfMany={species.length > 1} csv={`${apiOf(programme, 'readings', 'funnels.csv')}${queryOf({ ...chosen, by: 'stand', taxonId })}`} {...parts} />
          {curves && (
            <Section heading={species.length > 1 ? `${timeToRoot.heading}: ${(commonName ?? taxon).toLowerCase()}` : timeToRoot.heading} lead={timeToRoot.lead}>
              <RootingFigure curves={{ ...curves, inAll: 1, groups: curves.groups.filter((group) => group.taxonId === taxonId) }} csv={`${apiOf(programme, 'readings', 'time-to-root.csv')}${queryOf({ ...chosen, by: 'stand', taxonId })}`} />
            </Section>
          )}
        </article>
      ))}
      {forecast && <Section heading={ahead.heading} lead={ahead.lead}><ForecastFigures forecast={forecast} isNamed={species.length > 1} csv={`${apiOf(programme, 'readings', 'forecast.csv')}${query}`} /></Section>}
      {axis && axis.points.length > 0 && <Section heading={time.heading} lead={time.lead}><TimeFigure axis={axis} csv={`${apiOf(programme, 'readings', 'time-axis.csv')}${query}`} /></Section>}
    </>
  );
}

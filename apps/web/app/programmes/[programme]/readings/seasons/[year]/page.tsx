import { Funnels } from '@sprigline/contract';
import type { Metadata } from 'next';
import { getMessages } from 'next-intl/server';
import { notFound } from 'next/navigation';
import { AsOf } from '../../../../../../features/reading/as-of.tsx';
import { ChosenWords } from '../../../../../../features/reading/chosen-words.tsx';
import { DashboardParts } from '../../../../../../features/reading/dashboard-parts.tsx';
import { readDashboard } from '../../../../../../features/reading/dashboard-reads.ts';
import { FilterForm } from '../../../../../../features/reading/filter-form.tsx';
import { GroupReading } from '../../../../../../features/reading/group-reading.tsx';
import { afterIn, chosenIn, FILTERS, queryOf, type Search } from '../../../../../../features/reading/reading-address.ts';
import { pageOf } from '../../../../../../lib/page-address.ts';
import { read } from '../../../../../../lib/read.ts';
import { apiOf } from '../../../../../../lib/workplace.ts';
import { PageHeading } from '../../../../../../ui/page-heading.tsx';
import { Trail } from '../../../../../../ui/trail.tsx';

interface SeasonProps {
  readonly params: Promise<{ programme: string; year: string }>;
  readonly searchParams: Promise<Search>;
}

export async function generateMetadata(): Promise<Metadata> {
  const { readings, dashboards } = await getMessages();
  return { title: [dashboards.season.kind, readings.title].join(': ') };
}

/** What was stuck in one season, species by species. */
export default async function SeasonReadingPage({ params, searchParams }: SeasonProps) {
  const { programme, year } = await params;
  const search = await searchParams;
  const chosen = { ...chosenIn(search), season: year };
  const query = queryOf(chosen);
  const [{ groups }, dashboard, { readings: said, dashboards: { season: words } }] = await Promise.all([
    read(`${apiOf(programme, 'readings', 'funnels')}${queryOf({ ...chosen, by: 'taxon' })}`, Funnels), readDashboard(programme, chosen, afterIn(search)), getMessages(),
  ]);
  const name = dashboard.choices.seasons.find((season) => String(season.year) === year)?.name;
  if (name === undefined) notFound();
  return (
    <>
      <Trail steps={[{ href: `${pageOf(programme, 'readings')}${queryOf(chosenIn(search))}`, words: said.title }]} />
      <PageHeading kind={words.kind}>{name}</PageHeading>
      <FilterForm choices={dashboard.choices} chosen={chosen} here={pageOf(programme, 'readings', 'seasons', year)} names={FILTERS.filter((filter) => filter !== 'season')} />
      <ChosenWords choices={dashboard.choices} chosen={chosen} />
      <AsOf {...dashboard.lines} />
      {groups.length === 0 && <p>{Object.keys(chosen).length > 1 ? said.nothingChosen : words.nothing}</p>}
      {groups.map((group) => (
        <GroupReading key={group.key} name={name} group={group} csv={`${apiOf(programme, 'readings', 'funnels.csv')}${query}&by=taxon`} />
      ))}
      {groups.length > 0 && <DashboardParts programme={programme} of={dashboard} chosen={chosen} />}
    </>
  );
}

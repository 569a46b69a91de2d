import { Forecast, RootingCurves } from '@sprigline/contract';
import type { Metadata } from 'next';
import { getMessages, getTranslations } from 'next-intl/server';
import type { Route } from 'next';
import { redirect } from 'next/navigation';
import { ForecastFigures } from '../../../../features/forecast/forecast-figure.tsx';
import { AsOf } from '../../../../features/reading/as-of.tsx';
import { ChosenWords } from '../../../../features/reading/chosen-words.tsx';
import { DashboardParts } from '../../../../features/reading/dashboard-parts.tsx';
import { readDashboard } from '../../../../features/reading/dashboard-reads.ts';
import { FilterForm } from '../../../../features/reading/filter-form.tsx';
import { afterIn, chosenIn, queryOf, type Search } from '../../../../features/reading/reading-address.ts';
import { ReadingWays } from '../../../../features/reading/reading-ways.tsx';
import { RootingFigure } from '../../../../features/time-to-root/rooting-figure.tsx';
import { pageOf } from '../../../../lib/page-address.ts';
import { read } from '../../../../lib/read.ts';
import { apiOf, workplaceOf } from '../../../../lib/workplace.ts';
import { Empty } from '../../../../ui/empty.tsx';
import { PageHeading } from '../../../../ui/page-heading.tsx';
import { Section } from '../../../../ui/section.tsx';

export async function generateMetadata(): Promise<Metadata> {
  return { title: (await getTranslations('readings'))('title') };
}

/** The programme as a whole. */
export default async function ReadingsPage({ params, searchParams }: { params: Promise<{ programme: string }>; searchParams: Promise<Search> }) {
  const { programme } = await params;
  const search = await searchParams;
  const chosen = chosenIn(search);
  // A partner reads stand by stand: the whole is for the house.
  if ((await workplaceOf(programme)).role === 'partner') redirect(`${pageOf(programme, 'readings', 'funnels')}${queryOf(chosen)}` as Route);
  const [dashboard, curves, forecast, { readings: said, timeToRoot, forecast: ahead }, t] = await Promise.all([readDashboard(programme, chosen, afterIn(search)), read(`${apiOf(programme, 'readings', 'time-to-root')}${queryOf({ ...chosen, by: 'taxon' })}`, RootingCurves), read(`${apiOf(programme, 'readings', 'forecast')}${queryOf(chosen)}`, Forecast), getMessages(), getTranslations('dashboards')]);
  const { lines, choices } = dashboard;
  if (choices.seasons.length === 0 && lines.inAll.lines === 0) return <><PageHeading lead={said.lead}>{said.title}</PageHeading><Empty>{said.empty}</Empty></>;
  return (
    <>
      <PageHeading lead={said.lead}>{said.title}</PageHeading>
      <FilterForm choices={choices} chosen={chosen} here={pageOf(programme, 'readings')} />
      <ReadingWays programme={programme} choices={choices} chosen={chosen} />
      <ChosenWords choices={choices} chosen={chosen} />
      <AsOf {...lines} />
      {lines.inAll.lines === 0 ? <p>{said.nothingChosen}</p> : <p className="mb-8 max-w-prose text-lg">{t('sum', lines.inAll)}</p>}
      {lines.inAll.lines > 0 && <DashboardParts programme={programme} of={dashboard} chosen={chosen} />}
      {lines.inAll.lines > 0 && (
        <Section heading={timeToRoot.heading} lead={timeToRoot.lead}>
          <RootingFigure curves={curves} isNamed csv={`${apiOf(programme, 'readings', 'time-to-root.csv')}${queryOf({ ...chosen, by: 'taxon' })}`} />
        </Section>
      )}
      {lines.inAll.here > 0 && (
        <Section heading={ahead.heading} lead={ahead.lead}>
          <ForecastFigures forecast={forecast} isNamed csv={`${apiOf(programme, 'readings', 'forecast.csv')}${queryOf(chosen)}`} />
        </Section>
      )}
    </>
  );
}

import { ReadingChoices, SiteLines } from '@sprigline/contract';
import { getMessages } from 'next-intl/server';
import { AsOf } from '../../../../../features/reading/as-of.tsx';
import { ChosenWords } from '../../../../../features/reading/chosen-words.tsx';
import { FilterForm } from '../../../../../features/reading/filter-form.tsx';
import { chosenIn, queryOf, type Search } from '../../../../../features/reading/reading-address.ts';
import { SitesTable } from '../../../../../features/reading/sites-table.tsx';
import { pageOf } from '../../../../../lib/page-address.ts';
import { read } from '../../../../../lib/read.ts';
import { titled } from '../../../../../lib/titled.ts';
import { apiOf } from '../../../../../lib/workplace.ts';
import { Empty } from '../../../../../ui/empty.tsx';
import { PageHeading } from '../../../../../ui/page-heading.tsx';
import { Trail } from '../../../../../ui/trail.tsx';

export const generateMetadata = titled(({ dashboards }) => dashboards.sites.title);

export default async function SiteReadingsPage({ params, searchParams }: { params: Promise<{ programme: string }>; searchParams: Promise<Search> }) {
  const { programme } = await params;
  const chosen = chosenIn(await searchParams);
  const query = queryOf(chosen);
  const [answer, choices, { readings, dashboards: { sites: said } }] = await Promise.all([
    read(`${apiOf(programme, 'readings', 'sites')}${query}`, SiteLines), read(apiOf(programme, 'readings', 'choices'), ReadingChoices), getMessages(),
  ]);
  return (
    <>
      <Trail steps={[{ href: `${pageOf(programme, 'readings')}${query}`, words: readings.title }]} />
      <PageHeading lead={said.lead}>{said.title}</PageHeading>
      {answer.sites.length === 0 ? <Empty>{said.empty}</Empty> : (
        <>
          <FilterForm choices={choices} chosen={chosen} here={pageOf(programme, 'readings', 'sites')} />
          <ChosenWords choices={choices} chosen={chosen} />
          <AsOf {...answer} />
          <SitesTable programme={programme} sites={answer.sites} chosen={chosen} />
          <p className="not-on-paper mt-3"><a href={`${apiOf(programme, 'readings', 'sites.csv')}${query}`} className="inline-flex min-h-8 items-center underline">{said.csv}</a></p>
        </>
      )}
    </>
  );
}

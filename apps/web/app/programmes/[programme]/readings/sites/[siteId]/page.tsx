import { ReadingChoices, SiteReading } from '@sprigline/contract';
import { getMessages } from 'next-intl/server';
import { AsOf } from '../../../../../../features/reading/as-of.tsx';
import { ChosenWords } from '../../../../../../features/reading/chosen-words.tsx';
import { FilterForm } from '../../../../../../features/reading/filter-form.tsx';
import { chosenIn, queryOf, type Search } from '../../../../../../features/reading/reading-address.ts';
import { SiteParts } from '../../../../../../features/reading/site-parts.tsx';
import { pageOf } from '../../../../../../lib/page-address.ts';
import { read } from '../../../../../../lib/read.ts';
import { titled } from '../../../../../../lib/titled.ts';
import { apiOf } from '../../../../../../lib/workplace.ts';
import { ButtonLink } from '../../../../../../ui/button-link.tsx';
import { PageHeading } from '../../../../../../ui/page-heading.tsx';
import { Trail } from '../../../../../../ui/trail.tsx';

export const generateMetadata = titled(({ dashboards, readings }) => `${dashboards.site.kind}: ${readings.title}`);

export default async function SiteReadingPage({ params, searchParams }: { params: Promise<{ programme: string; siteId: string }>; searchParams: Promise<Search> }) {
  const { programme, siteId } = await params;
  const chosen = chosenIn(await searchParams);
  const query = queryOf(chosen);
  const [answer, choices, { readings, dashboards: { sites, site: said } }] = await Promise.all([
    read(`${apiOf(programme, 'readings', 'sites', siteId)}${query}`, SiteReading), read(apiOf(programme, 'readings', 'choices'), ReadingChoices), getMessages(),
  ]);
  return (
    <>
      <Trail steps={[{ href: `${pageOf(programme, 'readings')}${query}`, words: readings.title }, { href: `${pageOf(programme, 'readings', 'sites')}${query}`, words: sites.title }]} />
      <PageHeading kind={said.kind} act={<ButtonLink look="quiet" href={pageOf(programme, 'sites', siteId)}>{said.toSite}</ButtonLink>}>{answer.site.name}</PageHeading>
      <FilterForm choices={choices} chosen={chosen} here={pageOf(programme, 'readings', 'sites', siteId)} />
      <ChosenWords choices={choices} chosen={chosen} />
      <AsOf {...answer} />
      {answer.stands.length === 0 ? <p>{said.nothing}</p> : <SiteParts programme={programme} reading={answer} csv={`${apiOf(programme, 'readings', 'sites', siteId, 'donors.csv')}${query}`} />}
    </>
  );
}

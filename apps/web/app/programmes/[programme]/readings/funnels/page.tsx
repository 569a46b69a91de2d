import { Funnels, ReadingChoices } from '@sprigline/contract';
import type { Metadata } from 'next';
import { getMessages, getTranslations } from 'next-intl/server';
import { AsOf } from '../../../../features/reading/as-of.tsx';
import { FilterForm } from '../../../../features/reading/filter-form.tsx';
import { FunnelCards } from '../../../../features/reading/funnel-cards.tsx';
import { chosenIn, groupIn, queryOf, type Search } from '../../../../features/reading/reading-address.ts';
import { pageOf } from '../../../../lib/page-address.ts';
import { read } from '../../../../lib/read.ts';
import { apiOf } from '../../../../lib/workplace.ts';
import { ButtonLink } from '../../../../ui/button-link.tsx';
import { Empty } from '../../../../ui/empty.tsx';
import { PageHeading } from '../../../../ui/page-heading.tsx';

export async function generateMetadata(): Promise<Metadata> {
  return { title: (await getTranslations('readings'))('title') };
}

export default async function ReadingsPage({ params, searchParams }: { params: Promise<{ programme: string }>; searchParams: Promise<Search> }) {
  const { programme } = await params;
  const search = await searchParams;
  const [chosen, by] = [chosenIn(search), groupIn(search)];
  const [answer, choices, { readings: said }] = await Promise.all([
    read(`${apiOf(programme, 'readings', 'funnels')}${queryOf({ ...chosen, by })}`, Funnels),
    read(apiOf(programme, 'readings', 'choices'), ReadingChoices),
    getMessages(),
  ]);
  const hasPlants = choices.seasons.length > 0 || answer.groups.length > 0;
  return (
    <>
      <PageHeading lead={said.lead} act={hasPlants && <ButtonLink href={pageOf(programme, 'readings', 'donors-at-risk')} look="quiet">{said.atRiskAll}</ButtonLink>}>
        {said.title}
      </PageHeading>
      {hasPlants ? <FilterForm choices={choices} chosen={chosen} by={by} here={pageOf(programme, 'readings')} /> : <Empty>{said.empty}</Empty>}
      {hasPlants && <AsOf {...answer} />}
      {hasPlants && answer.groups.length === 0 && <p>{said.nothingChosen}</p>}
      {answer.groups.length > 0 && <FunnelCards programme={programme} groups={answer.groups} by={by} chosen={chosen} />}
    </>
  );
}

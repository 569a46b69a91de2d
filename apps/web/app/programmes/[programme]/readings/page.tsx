import { type FunnelGroup, Funnels, ReadingChoices } from '@sprigline/contract';
import type { Metadata } from 'next';
import { getMessages, getTranslations } from 'next-intl/server';
import { FunnelKey } from '../../../../features/reading/funnel-key.tsx';
import { AsOf } from '../../../../features/reading/as-of.tsx';
import { FilterForm } from '../../../../features/reading/filter-form.tsx';
import { FunnelFigure } from '../../../../features/reading/funnel-figure.tsx';
import { chosenIn, queryOf, type Search } from '../../../../features/reading/reading-address.ts';
import { pageOf } from '../../../../lib/page-address.ts';
import { read } from '../../../../lib/read.ts';
import { apiOf } from '../../../../lib/workplace.ts';
import { ButtonLink } from '../../../../ui/button-link.tsx';
import { Card } from '../../../../ui/card.tsx';
import { Empty } from '../../../../ui/empty.tsx';
import { PageHeading } from '../../../../ui/page-heading.tsx';
import { RowLink } from '../../../../ui/row-link.tsx';
import { Species } from '../../../../ui/species.tsx';

export async function generateMetadata(): Promise<Metadata> {
  return { title: (await getTranslations('readings'))('title') };
}

export default async function ReadingsPage({ params, searchParams }: { params: Promise<{ programme: string }>; searchParams: Promise<Search> }) {
  const { programme } = await params;
  const chosen = chosenIn(await searchParams);
  const funnels = { ...chosen, by: 'stand' };
  const [answer, choices, { readings: said }] = await Promise.all([
    read(`${apiOf(programme, 'readings', 'funnels')}${queryOf(funnels)}`, Funnels),
    read(apiOf(programme, 'readings', 'choices'), ReadingChoices),
    getMessages(),
  ]);
  const hasPlants = choices.seasons.length > 0 || answer.groups.length > 0;
  return (
    <>
      <PageHeading lead={said.lead} act={hasPlants && <ButtonLink href={pageOf(programme, 'readings', 'donors-at-risk')} look="quiet">{said.atRiskAll}</ButtonLink>}>
        {said.title}
      </PageHeading>
      {hasPlants ? <FilterForm choices={choices} chosen={chosen} here={pageOf(programme, 'readings')} /> : <Empty>{said.empty}</Empty>}
      {hasPlants && <AsOf {...answer} />}
      {hasPlants && answer.groups.length === 0 && <p>{said.nothingChosen}</p>}
      {answer.groups.length > 0 && <FunnelKey />}
      {answer.groups.length > 1 && <p className="mb-4 text-sm text-ink-soft">{said.ownScale}</p>}
      <div className="grid items-start gap-6 lg:grid-cols-2 2xl:grid-cols-3">
        {answer.groups.map((group) => (
          <Card key={group.key}>
            <h2 className="text-xl">{group.name || said.noStand}</h2>
            {group.taxon && <p className="mb-3 text-ink-soft"><Species name={group.taxon} /></p>}
            <FunnelFigure
              name={group.name || said.noStand}
              group={group}
              csv={`${apiOf(programme, 'readings', 'funnels.csv')}${queryOf({ ...funnels, ...only(group) })}`}
              onward={group.standId && (
                <p className="not-on-paper mt-3 font-semibold">
                  <RowLink href={`${pageOf(programme, 'readings', 'stands', group.standId)}${queryOf(chosen)}`}>{said.more}</RowLink>
                </p>
              )}
            />
          </Card>
        ))}
      </div>
    </>
  );
}

/** The filter that leaves one group alone. */
const only = ({ standId, taxonId }: FunnelGroup) => ({ ...(standId && { standId }), ...(taxonId && { taxonId }) });

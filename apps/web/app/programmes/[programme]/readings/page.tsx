import { Funnels, ReadingChoices } from '@sprigline/contract';
import type { Metadata } from 'next';
import { getMessages, getTranslations } from 'next-intl/server';
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
      {hasPlants ? <FilterForm choices={choices} chosen={chosen} /> : <Empty>{said.empty}</Empty>}
      {hasPlants && <AsOf {...answer} />}
      {hasPlants && answer.groups.length === 0 && <p>{said.nothingChosen}</p>}
      <div className="grid gap-8 xl:grid-cols-2">
        {answer.groups.map(({ key, name, standId, taxonId, taxon, stages }) => (
          <Card key={key}>
            <h2 className="text-xl">{name || said.noStand}</h2>
            {taxon && <p className="mb-3 text-ink-soft"><Species name={taxon} /></p>}
            <FunnelFigure name={name} stages={stages} csv={`${apiOf(programme, 'readings', 'funnels.csv')}${queryOf({ ...funnels, ...(standId && { standId }), ...(taxonId && { taxonId }) })}`} />
            {standId && (
              <p className="not-on-paper mt-4">
                <RowLink href={`${pageOf(programme, 'readings', 'stands', standId)}${queryOf(chosen)}`}>{said.more}</RowLink>
              </p>
            )}
          </Card>
        ))}
      </div>
    </>
  );
}

import { Funnels, ReadingChoices } from '@sprigline/contract';
import { getMessages } from 'next-intl/server';
import { AsOf } from '../../../../../features/reading/as-of.tsx';
import { ChosenWords } from '../../../../../features/reading/chosen-words.tsx';
import { FilterForm } from '../../../../../features/reading/filter-form.tsx';
import { FunnelCards } from '../../../../../features/reading/funnel-cards.tsx';
import { afterIn, chosenIn, FILTERS, groupIn, GROUPS, queryOf, type Search } from '../../../../../features/reading/reading-address.ts';
import { pageOf } from '../../../../../lib/page-address.ts';
import { readPart } from '../../../../../lib/pages.ts';
import { read } from '../../../../../lib/read.ts';
import { titled } from '../../../../../lib/titled.ts';
import { apiOf, workplaceOf } from '../../../../../lib/workplace.ts';
import { ButtonLink } from '../../../../../ui/button-link.tsx';
import { PageHeading } from '../../../../../ui/page-heading.tsx';
import { Trail } from '../../../../../ui/trail.tsx';

/** Pictures on a page; more of them nobody compares. */
const MOST = '24';

export const generateMetadata = titled(({ dashboards }) => dashboards.funnels.title);

export default async function FunnelsPage({ params, searchParams }: { params: Promise<{ programme: string }>; searchParams: Promise<Search> }) {
  const { programme } = await params;
  const search = await searchParams;
  const [chosen, by, from] = [chosenIn(search), groupIn(search), afterIn(search)];
  const [{ items: answer, after }, choices, { role }, { readings: said, dashboards: { funnels: words } }] = await Promise.all([
    readPart(`${apiOf(programme, 'readings', 'funnels')}${queryOf({ ...chosen, by, limit: MOST, ...(from && { after: from }) })}`, Funnels),
    read(apiOf(programme, 'readings', 'choices'), ReadingChoices), workplaceOf(programme),
    getMessages(),
  ]);
  const isPartner = role === 'partner';
  return (
    <>
      {!isPartner && <Trail steps={[{ href: `${pageOf(programme, 'readings')}${queryOf(chosen)}`, words: said.title }]} />}
      <PageHeading lead={isPartner ? said.ofOurs : words.lead}>{words.title}</PageHeading>
      <FilterForm
        choices={choices} chosen={chosen} by={by} here={pageOf(programme, 'readings', 'funnels')}
        // They are told no recipe, and the places they may choose hold plants of others as well.
        {...(isPartner && { names: FILTERS.filter((name) => name !== 'recipeId' && name !== 'placeId'), groups: GROUPS.filter((group) => group !== 'recipe') })}
      />
      <ChosenWords choices={choices} chosen={chosen} />
      <AsOf {...answer} />
      {answer.groups.length === 0 ? <p>{said.nothingChosen}</p> : <FunnelCards programme={programme} groups={answer.groups} by={by} chosen={chosen} />}
      {after && <div className="not-on-paper mt-6"><ButtonLink look="quiet" href={queryOf({ ...chosen, by, after })}>{words.more}</ButtonLink></div>}
    </>
  );
}

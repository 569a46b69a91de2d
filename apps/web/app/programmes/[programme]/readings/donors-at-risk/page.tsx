import { DonorsAtRisk, ReadingChoices } from '@sprigline/contract';
import type { Metadata } from 'next';
import { getMessages, getTranslations } from 'next-intl/server';
import { AsOf } from '../../../../../features/reading/as-of.tsx';
import { ChosenWords } from '../../../../../features/reading/chosen-words.tsx';
import { FilterForm } from '../../../../../features/reading/filter-form.tsx';
import { HoldingsList } from '../../../../../features/reading/holdings-list.tsx';
import { afterIn, chosenIn, queryOf, type Search } from '../../../../../features/reading/reading-address.ts';
import { WorkedOut } from '../../../../../features/reading/worked-out.tsx';
import { pageOf } from '../../../../../lib/page-address.ts';
import { readPart } from '../../../../../lib/pages.ts';
import { read } from '../../../../../lib/read.ts';
import { apiOf } from '../../../../../lib/workplace.ts';
import { ButtonLink } from '../../../../../ui/button-link.tsx';
import { PageHeading } from '../../../../../ui/page-heading.tsx';
import { Trail } from '../../../../../ui/trail.tsx';

export async function generateMetadata(): Promise<Metadata> {
  return { title: (await getTranslations('readings'))('atRisk.title') };
}

export default async function DonorsAtRiskPage({ params, searchParams }: { params: Promise<{ programme: string }>; searchParams: Promise<Search> }) {
  const { programme } = await params;
  const search = await searchParams;
  const [chosen, from] = [chosenIn(search), afterIn(search)];
  const query = queryOf(chosen);
  const [{ items: answer, after }, choices, { readings: said }, t] = await Promise.all([
    readPart(`${apiOf(programme, 'readings', 'donors-at-risk')}${queryOf({ ...chosen, ...(from && { after: from }) })}`, DonorsAtRisk),
    read(apiOf(programme, 'readings', 'choices'), ReadingChoices), getMessages(), getTranslations('readings.atRisk'),
  ]);
  return (
    <>
      <Trail steps={[{ href: `${pageOf(programme, 'readings')}${query}`, words: said.title }]} />
      <PageHeading lead={said.atRisk.lead}>{said.atRisk.title}</PageHeading>
      <FilterForm choices={choices} chosen={chosen} here={pageOf(programme, 'readings', 'donors-at-risk')} />
      <ChosenWords choices={choices} chosen={chosen} />
      <AsOf {...answer} />
      <p className="mb-4 max-w-prose">{t('few', { n: answer.fewRooted })} <strong>{t('notTold', { n: answer.notTold })}</strong></p>
      {answer.donors.length < answer.inAll && <p className="mb-3 text-ink-soft">{t('part', { n: answer.donors.length, all: answer.inAll })}</p>}
      {answer.donors.length === 0 ? <p>{said.atRisk.empty}</p> : <HoldingsList programme={programme} donors={answer.donors} />}
      {after && <div className="not-on-paper mt-4"><ButtonLink look="quiet" href={queryOf({ ...chosen, after })}>{t('more')}</ButtonLink></div>}
      <div className="mt-3 text-sm"><WorkedOut what="risk" /></div>
      <p className="not-on-paper mt-2">
        <a href={`${apiOf(programme, 'readings', 'donors-at-risk.csv')}${query}`} className="inline-flex min-h-8 items-center underline">{said.csv}</a>
      </p>
    </>
  );
}

import { SharedPlan } from '@sprigline/contract';
import type { Metadata } from 'next';
import { getMessages, getTranslations } from 'next-intl/server';
import { SharedTargetPart } from '../../../features/plan/shared-target-part.tsx';
import { OpinionList } from '../../../features/second-opinion/opinion-list.tsx';
import { sayDay } from '../../../lib/calendar.ts';
import { readIfAllowed } from '../../../lib/read-if-allowed.ts';
import { Caution } from '../../../ui/caution.tsx';
import { DoorPage } from '../../../ui/door-page.tsx';
import { Mark } from '../../../ui/mark.tsx';
import { PageHeading } from '../../../ui/page-heading.tsx';

/** No search engine keeps it. */
export async function generateMetadata(): Promise<Metadata> {
  return { title: (await getTranslations('plans.shared'))('title'), robots: { index: false, follow: false, noarchive: true } };
}

/** A plan as people outside see it, who have the link and no account. */
export default async function SharedPlanPage({ params }: { params: Promise<{ token: string }> }) {
  const { token } = await params;
  const [plan, { plans: said, secondOpinion, shell }, t] = await Promise.all([readIfAllowed(`/api/v1/shared-plans/${encodeURIComponent(token)}`, SharedPlan), getMessages(), getTranslations('plans.shared')]);
  if (!plan) return <DoorPage heading={said.shared.closed} lead={said.shared.closedTodo}>{null}</DoorPage>;
  const { programme, seasonName, rootedMeans, expiresAt, targets } = plan.body;
  return (
    <div className="mx-auto max-w-5xl px-4 py-8">
      <header className="mb-6 flex items-center gap-3 text-lg font-semibold"><Mark />{shell.name}</header>
      <main id="main" tabIndex={-1} className="outline-none">
        <PageHeading lead={t('lead', { programme, day: sayDay(expiresAt.slice(0, 10)) })}>{t('heading', { season: seasonName })}</PageHeading>
        <div className="mb-8 grid gap-4"><p>{t('rooted', { means: rootedMeans })}</p><Caution>{said.caution}</Caution></div>
        {targets.map((target, at) => (
          <SharedTargetPart key={at} number={at + 1} target={target}>
            <div><h3 className="mb-2 font-semibold">{secondOpinion.title}</h3><OpinionList opinions={target.answer.opinions} species={target.answer.species?.name} /></div>
          </SharedTargetPart>
        ))}
      </main>
    </div>
  );
}

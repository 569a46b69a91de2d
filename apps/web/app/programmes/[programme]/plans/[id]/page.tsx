import { Plan, PlanShare } from '@sprigline/contract';
import { getMessages, getTranslations } from 'next-intl/server';
import { z } from 'zod';
import { SharePart } from '../../../../../features/plan/share-part.tsx';
import { TargetPart } from '../../../../../features/plan/target-part.tsx';
import { OpinionList } from '../../../../../features/second-opinion/opinion-list.tsx';
import { sayDay } from '../../../../../lib/calendar.ts';
import { pageOf } from '../../../../../lib/page-address.ts';
import { read } from '../../../../../lib/read.ts';
import { titled } from '../../../../../lib/titled.ts';
import { apiOf, workplaceOf } from '../../../../../lib/workplace.ts';
import { ButtonLink } from '../../../../../ui/button-link.tsx';
import { Caution } from '../../../../../ui/caution.tsx';
import { Empty } from '../../../../../ui/empty.tsx';
import { Flag } from '../../../../../ui/flag.tsx';
import { PageHeading } from '../../../../../ui/page-heading.tsx';
import { Trail } from '../../../../../ui/trail.tsx';

export const generateMetadata = titled(({ plans }) => plans.kind);

export default async function PlanPage({ params }: { params: Promise<{ programme: string; id: string }> }) {
  const { programme, id } = await params;
  const [plan, { isDesk, zone }, { plans: said, secondOpinion }, t, opinion] = await Promise.all([read(apiOf(programme, 'plans', id), Plan), workplaceOf(programme), getMessages(), getTranslations('plans'), getTranslations('secondOpinion')]);
  const shares = isDesk ? await read(apiOf(programme, 'plans', id, 'shares'), z.array(PlanShare)) : [];
  const way = (...parts: string[]) => pageOf(programme, 'plans', id, ...parts);
  const add = isDesk && <ButtonLink href={way('targets', 'new')}>{said.addTarget}</ButtonLink>;
  const papers = [[way('pdf'), said.print], [`${way('pdf')}?paper=letter`, said.printLetter], [apiOf(programme, 'plans', id, 'trees.csv'), said.csv]] as const;
  return (
    <>
      <Trail steps={[{ href: pageOf(programme, 'plans'), words: said.title }]} />
      <PageHeading kind={`${said.kind}, ${said.season.toLowerCase()} ${plan.seasonName}`} lead={plan.note} act={plan.targets.length > 0 && add}>{plan.name}</PageHeading>
      {plan.targets.length === 0 ? <div className="mb-12"><Empty act={add}>{said.noTargets}</Empty></div> : (
        <>
          <p className="not-on-paper mb-6 flex flex-wrap gap-x-6">{papers.map(([href, words]) => <a key={href} href={href} className="inline-flex min-h-8 items-center underline">{words}</a>)}</p>
          <div className="mb-8"><Caution>{said.caution}</Caution></div>
        </>
      )}
      {plan.targets.map((target) => {
        const unusual = target.answer.opinions.filter(({ verdict }) => verdict === 'unusual').length;
        return (
          <TargetPart key={target.id} programme={programme} planId={id} target={target} isDesk={isDesk}>
            <details>
              <summary className="inline-flex min-h-11 cursor-pointer flex-wrap items-center gap-3"><span className="underline">{secondOpinion.title}</span><Flag tone={unusual > 0 ? 'look' : 'good'}>{opinion('summary', { unusual })}</Flag></summary>
              <div className="mt-2"><OpinionList opinions={target.answer.opinions} species={target.answer.species?.name} /></div>
            </details>
          </TargetPart>
        );
      })}
      {isDesk && plan.targets.length > 0 && <SharePart programme={programme} planId={id} shares={shares} zone={zone} />}
      <p className="flex flex-wrap items-center gap-x-4 text-sm text-ink-soft">{t('madeBy', { name: plan.madeBy, day: sayDay(plan.madeAt.slice(0, 10)) })} {isDesk && <a className="not-on-paper inline-flex min-h-8 items-center underline" href={way('edit')}>{said.change}</a>}</p>
    </>
  );
}

import { Plan } from '@sprigline/contract';
import { getMessages, getTranslations } from 'next-intl/server';
import { PlanPaper } from '../../../../../../features/plan/plan-paper.tsx';
import { sayDay } from '../../../../../../lib/calendar.ts';
import { opinionSaid } from '../../../../../../lib/opinion-said.ts';
import { read } from '../../../../../../lib/read.ts';
import { apiOf, workplaceOf } from '../../../../../../lib/workplace.ts';
import { paperOf } from '../../../../../../ui/paper/paper-size.ts';
import { PaperSheet } from '../../../../../../ui/paper/paper-sheet.tsx';
import { pdfAnswer } from '../../../../../../ui/paper/pdf-answer.ts';

/** The plan as PDF. */
export async function GET(request: Request, { params }: { params: Promise<{ programme: string; id: string }> }): Promise<Response> {
  const { programme, id } = await params;
  const [plan, { name, today }, { plans: said, secondOpinion }, t, tOpinion] = await Promise.all([read(apiOf(programme, 'plans', id), Plan), workplaceOf(programme), getMessages(), getTranslations('plans'), getTranslations('secondOpinion')]);
  const opinions = plan.targets.map(({ answer }) => answer.opinions.map((one) => opinionSaid(one, answer.species?.name, secondOpinion, tOpinion)));
  return pdfAnswer(
    <PaperSheet paper={paperOf(new URL(request.url).searchParams)} language="en" title={plan.name} more={`${name}, ${said.season.toLowerCase()} ${plan.seasonName}`} foot={t('asOf', { name: plan.name, programme: name, day: sayDay(today) })} pageOf={(page, pages) => t('page', { page, pages })}>
      <PlanPaper targets={plan.targets} opinions={opinions} said={said} opinionHeading={secondOpinion.title} t={t} />
    </PaperSheet>,
    plan.name,
  );
}

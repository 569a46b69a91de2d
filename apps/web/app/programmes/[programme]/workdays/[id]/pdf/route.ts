import { WorkdaySummary } from '@sprigline/contract';
import { getMessages, getTranslations } from 'next-intl/server';
import { summaryPaper } from '../../../../../../features/workday/summary-paper.tsx';
import { summarySaid } from '../../../../../../features/workday/summary-said.ts';
import { sayDay } from '../../../../../../lib/calendar.ts';
import { pageOf } from '../../../../../../lib/page-address.ts';
import { read } from '../../../../../../lib/read.ts';
import { apiOf, workplaceOf } from '../../../../../../lib/workplace.ts';
import { paperOf } from '../../../../../../ui/paper/paper-size.ts';
import { pdfAnswer } from '../../../../../../ui/paper/pdf-answer.ts';

/** The one page of a workday as PDF. */
export async function GET(asked: Request, { params }: { params: Promise<{ programme: string; id: string }> }): Promise<Response> {
  const { programme, id } = await params;
  const [summary, workplace, { workdays: said }, t] = await Promise.all([
    read(apiOf(programme, 'workdays', id, 'summary'), WorkdaySummary), workplaceOf(programme), getMessages(), getTranslations('workdays'),
  ]);
  const words = await summarySaid(summary);
  const paper = summaryPaper({
    summary, words, species: said.species, donorTrees: said.acts.donorTrees, language: 'en', paper: paperOf(new URL(asked.url).searchParams),
    more: workplace.name,
    foot: t('asOf', { day: sayDay(workplace.today), programme: workplace.name }),
    pageOf: (page, pages) => t('pageOf', { page, pages }),
    qrTo: new URL(pageOf(programme, 'workdays', id), asked.url).href,
  });
  return pdfAnswer(paper, words.title);
}

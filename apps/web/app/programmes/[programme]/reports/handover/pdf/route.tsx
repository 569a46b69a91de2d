import { getMessages, getTranslations } from 'next-intl/server';
import { handoverLists } from '../../../../../../features/report/handover-words.ts';
import { readHandover } from '../../../../../../features/report/read-report.ts';
import { HandoverPaper } from '../../../../../../features/report/report-paper.tsx';
import { sayDay } from '../../../../../../lib/calendar.ts';
import { paperOf } from '../../../../../../ui/paper/paper-size.ts';
import { PaperSheet } from '../../../../../../ui/paper/paper-sheet.tsx';
import { pdfAnswer } from '../../../../../../ui/paper/pdf-answer.ts';

export async function GET(request: Request, { params }: { params: Promise<{ programme: string }> }): Promise<Response> {
  const { programme } = await params;
  const [report, messages, t, tOf, counts] = await Promise.all([readHandover(programme), getMessages(), getTranslations('reports'), getTranslations('reports.handover'), getTranslations('due.counts')]);
  const { reports: said } = messages;
  const day = sayDay(report.asOf);
  return pdfAnswer(
    <PaperSheet paper={paperOf(new URL(request.url).searchParams)} language="en" title={said.handover.title} more={t('made', { programme: report.programme, day })} foot={t('asOf', { day })} pageOf={(page, pages) => t('page', { page, pages })}>
      <HandoverPaper report={report} said={said.handover} lists={handoverLists(report, tOf, counts, messages)} />
    </PaperSheet>,
    said.handover.title,
  );
}

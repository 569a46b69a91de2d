import { getMessages, getTranslations } from 'next-intl/server';
import { readFunder } from '../../../../../../features/report/read-report.ts';
import { askedOf, FUNDER } from '../../../../../../features/report/report-address.ts';
import { FunderPaper, PaperDefinitions } from '../../../../../../features/report/report-paper.tsx';
import { sayDay } from '../../../../../../lib/calendar.ts';
import { paperOf } from '../../../../../../ui/paper/paper-size.ts';
import { PaperSheet } from '../../../../../../ui/paper/paper-sheet.tsx';
import { pdfAnswer } from '../../../../../../ui/paper/pdf-answer.ts';

export async function GET(request: Request, { params }: { params: Promise<{ programme: string }> }): Promise<Response> {
  const { programme } = await params;
  const address = new URL(request.url).searchParams;
  const [report, { reports: said }, t, tOf] = await Promise.all([
    readFunder(programme, askedOf(Object.fromEntries(address), FUNDER)), getMessages(), getTranslations('reports'), getTranslations('reports.funder'),
  ]);
  const day = sayDay(report.asOf);
  return pdfAnswer(
    <PaperSheet paper={paperOf(address)} language="en" title={said.funder.title} more={t('made', { programme: report.programme, day })} foot={`${t('asOf', { day })} ${said.asOfMore}`} pageOf={(page, pages) => t('page', { page, pages })}>
      <FunderPaper report={report} said={said.funder} t={tOf} />
      <PaperDefinitions heading={said.means} says={Object.values(said.funder.definitions)} />
    </PaperSheet>,
    said.funder.title,
  );
}

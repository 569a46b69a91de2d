import { getMessages, getTranslations } from 'next-intl/server';
import { landownerLines } from '../../../../../../features/report/landowner-lines.ts';
import { readLandowner } from '../../../../../../features/report/read-report.ts';
import { askedOf, LANDOWNER } from '../../../../../../features/report/report-address.ts';
import { LandownerPaper, PaperDefinitions } from '../../../../../../features/report/report-paper.tsx';
import { sayDay } from '../../../../../../lib/calendar.ts';
import { paperOf } from '../../../../../../ui/paper/paper-size.ts';
import { PaperSheet } from '../../../../../../ui/paper/paper-sheet.tsx';
import { pdfAnswer } from '../../../../../../ui/paper/pdf-answer.ts';

export async function GET(request: Request, { params }: { params: Promise<{ programme: string }> }): Promise<Response> {
  const { programme } = await params;
  const address = new URL(request.url).searchParams;
  const [report, { reports: said }, t, tOf] = await Promise.all([
    readLandowner(programme, askedOf(Object.fromEntries(address), LANDOWNER)), getMessages(), getTranslations('reports'), getTranslations('reports.landowner'),
  ]);
  const day = sayDay(report.asOf);
  const title = tOf('titleOf', { name: report.subject.name });
  return pdfAnswer(
    <PaperSheet paper={paperOf(address)} language="en" title={title} more={t('made', { programme: report.programme, day })} foot={`${t('asOf', { day })} ${said.asOfMore}`} pageOf={(page, pages) => t('page', { page, pages })}>
      <LandownerPaper report={report} said={said.landowner} lines={landownerLines(report, tOf)} />
      <PaperDefinitions heading={said.means} says={[...Object.values(said.landowner.definitions), t('rootedMeans', { means: report.rootedMeans })]} />
    </PaperSheet>,
    title,
  );
}

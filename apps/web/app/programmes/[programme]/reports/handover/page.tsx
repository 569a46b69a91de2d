import { getMessages, getTranslations } from 'next-intl/server';
import { HandoverPage } from '../../../../../features/report/handover-page.tsx';
import { handoverLists } from '../../../../../features/report/handover-words.ts';
import { readHandover } from '../../../../../features/report/read-report.ts';
import { queryOf } from '../../../../../features/report/report-address.ts';
import { ReportLinks } from '../../../../../features/report/report-links.tsx';
import { sayDay } from '../../../../../lib/calendar.ts';
import { pageOf } from '../../../../../lib/page-address.ts';
import { titled } from '../../../../../lib/titled.ts';
import { apiOf } from '../../../../../lib/workplace.ts';
import { PageHeading } from '../../../../../ui/page-heading.tsx';
import { Trail } from '../../../../../ui/trail.tsx';

export const generateMetadata = titled(({ reports }) => reports.handover.title);

export default async function HandoverReportPage({ params }: { params: Promise<{ programme: string }> }) {
  const { programme } = await params;
  const [report, messages, t, tOf, counts] = await Promise.all([readHandover(programme), getMessages(), getTranslations('reports'), getTranslations('reports.handover'), getTranslations('due.counts')]);
  const { reports: said } = messages;
  return (
    <>
      <Trail steps={[{ href: pageOf(programme, 'reports'), words: said.title }]} />
      <PageHeading kind={said.kind} lead={`${said.handover.lead} ${t('made', { programme: report.programme, day: sayDay(report.asOf) })}.`}>{said.handover.title}</PageHeading>
      <ReportLinks pdf={(paper) => `${pageOf(programme, 'reports', 'handover', 'pdf')}${queryOf({ paper })}`} csv={apiOf(programme, 'reports', 'handover.csv')} />
      <HandoverPage programme={programme} report={report} lists={handoverLists(report, tOf, counts, messages)} />
    </>
  );
}

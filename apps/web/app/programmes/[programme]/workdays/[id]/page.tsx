import { Workday, WorkdaySummary } from '@sprigline/contract';
import { getMessages, getTranslations } from 'next-intl/server';
import { CopyText } from '../../../../../features/workday/copy-text.tsx';
import { summaryText } from '../../../../../features/workday/summary-lines.ts';
import { summarySaid } from '../../../../../features/workday/summary-said.ts';
import { SummaryTable } from '../../../../../features/workday/summary-table.tsx';
import { sayDay } from '../../../../../lib/calendar.ts';
import { pageOf } from '../../../../../lib/page-address.ts';
import { read } from '../../../../../lib/read.ts';
import { titled } from '../../../../../lib/titled.ts';
import { apiOf, workplaceOf } from '../../../../../lib/workplace.ts';
import { buttonClass } from '../../../../../ui/button-class.ts';
import { ButtonLink } from '../../../../../ui/button-link.tsx';
import { Empty } from '../../../../../ui/empty.tsx';
import { Facts } from '../../../../../ui/facts.tsx';
import { PageHeading } from '../../../../../ui/page-heading.tsx';
import { Section } from '../../../../../ui/section.tsx';
import { Trail } from '../../../../../ui/trail.tsx';

export const generateMetadata = titled(({ workdays }) => workdays.kind);

export default async function WorkdayPage({ params }: { params: Promise<{ programme: string; id: string }> }) {
  const { programme, id } = await params;
  const [workday, summary, { isDesk, me }, { workdays: said }, t] = await Promise.all([
    read(apiOf(programme, 'workdays', id), Workday), read(apiOf(programme, 'workdays', id, 'summary'), WorkdaySummary), workplaceOf(programme), getMessages(), getTranslations('workdays'),
  ]);
  const words = await summarySaid(summary);
  const pdf = pageOf(programme, 'workdays', id, 'pdf');
  const others = summary.adults - summary.people.length;
  return (
    <>
      <Trail steps={[{ href: pageOf(programme, 'workdays'), words: said.title }]} />
      <PageHeading kind={said.kind} act={(isDesk || workday.madeBy === me.personId) && <ButtonLink look="quiet" href={pageOf(programme, 'workdays', id, 'edit')}>{said.change}</ButtonLink>}>
        {[sayDay(summary.day, 'long'), summary.place].filter(Boolean).join(', ')}
      </PageHeading>
      <Facts
        facts={[
          { term: said.fields.tasks, says: summary.tasks && <span className="whitespace-pre-line">{summary.tasks}</span> },
          { term: said.fields.personIds, says: summary.people.length === 0 ? null : [summary.people.join(', '), others > 0 ? t('others', { n: others }) : ''].join(' ') },
          { term: said.people, says: `${t('adults', { n: summary.adults })}, ${t('childrenThere', { n: summary.children })}` },
          { term: said.fields.hours, says: summary.hours === null ? null : `${t('hoursOf', { n: summary.hours })}, ${t('peopleHours', { n: summary.peopleHours ?? 0 })}` },
        ]}
      />
      <div className="mt-10">
        <Section heading={said.summary} lead={said.peopleHoursLead}>
          {summary.species.length === 0 ? <Empty>{said.nothing}</Empty> : <SummaryTable summary={summary} words={words} />}
          <nav aria-label={said.summary} className="not-on-paper mt-6 flex flex-wrap gap-3">
            <a className={buttonClass('quiet')} href={pdf}>{said.pdfA4}</a>
            <a className={buttonClass('quiet')} href={`${pdf}?paper=letter`}>{said.pdfLetter}</a>
          </nav>
        </Section>
      </div>
      <div className="not-on-paper">
        <Section heading={said.text}><CopyText text={summaryText(summary, words)} label={said.text} copy={said.copy} copied={said.copied} /></Section>
      </div>
    </>
  );
}

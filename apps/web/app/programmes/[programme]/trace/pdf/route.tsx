import { getMessages, getTranslations } from 'next-intl/server';
import { notFound } from 'next/navigation';
import { readTrace } from '../../../../../features/trace/read-trace.ts';
import { askedIn, ON_PAPER } from '../../../../../features/trace/trace-address.ts';
import { TracePaper } from '../../../../../features/trace/trace-paper.tsx';
import { sayDay } from '../../../../../lib/calendar.ts';
import { workplaceOf } from '../../../../../lib/workplace.ts';
import { paperOf } from '../../../../../ui/paper/paper-size.ts';
import { PaperSheet } from '../../../../../ui/paper/paper-sheet.tsx';
import { pdfAnswer } from '../../../../../ui/paper/pdf-answer.ts';

export async function GET(request: Request, { params }: { params: Promise<{ programme: string }> }): Promise<Response> {
  const { programme } = await params;
  const address = new URL(request.url).searchParams;
  const asked = askedIn(Object.fromEntries(address));
  if (!asked) notFound();
  const [trace, { name }, { trace: said, words }, t] = await Promise.all([readTrace(programme, asked, ON_PAPER), workplaceOf(programme), getMessages(), getTranslations('trace')]);
  const title = `${said.title}: ${trace.subject.name}`;
  const { sums } = trace;
  return pdfAnswer(
    <PaperSheet paper={paperOf(address)} language="en" title={title} more={name} foot={t('asOf', { day: sayDay(trace.asOf) })} pageOf={(page, pages) => t('page', { page, pages })}>
      <TracePaper
        trace={trace} said={said} stages={words.stage}
        days={(from, until) => (until === null ? t('daysOpen', { from: sayDay(from) }) : t('days', { from: sayDay(from), until: sayDay(until) }))}
        sums={t('sums', { batches: sums.batches, plants: sums.plants, beside: sums.beside, outside: sums.givenOutside })}
      />
    </PaperSheet>,
    title,
  );
}

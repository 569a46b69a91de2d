import { Treatments } from '@sprigline/contract';
import { getMessages, getTranslations } from 'next-intl/server';
import { TreatmentPaper } from '../../../../../features/treatment/treatment-paper.tsx';
import { treatmentQuery } from '../../../../../features/treatment/treatment-query.ts';
import { treatmentWords } from '../../../../../features/treatment/treatment-words.ts';
import { sayDay } from '../../../../../lib/calendar.ts';
import { read } from '../../../../../lib/read.ts';
import { apiOf, workplaceOf } from '../../../../../lib/workplace.ts';
import { paperOf } from '../../../../../ui/paper/paper-size.ts';
import { PaperSheet } from '../../../../../ui/paper/paper-sheet.tsx';
import { pdfAnswer } from '../../../../../ui/paper/pdf-answer.ts';

/** The record as PDF. */
export async function GET(request: Request, { params }: { params: Promise<{ programme: string }> }): Promise<Response> {
  const { programme } = await params;
  const address = new URL(request.url).searchParams;
  const asked = treatmentQuery(Object.fromEntries(address));
  const [{ asOf, from, until, treatments }, { name }, { treatments: said, entries }, t] = await Promise.all([
    read(`${apiOf(programme, 'treatments')}?${asked}`, Treatments), workplaceOf(programme), getMessages(), getTranslations('treatments'),
  ]);
  const title = asked.get('what') === 'spray' ? said.spraysTitle : said.title;
  const told = t('asOf', { programme: name, from: sayDay(from), until: sayDay(until), day: sayDay(asOf) });
  const rows = treatments.map((one) => ({ id: one.entryId, ...treatmentWords(one, said, entries.treatments, t) }));
  return pdfAnswer(
    <PaperSheet paper={paperOf(address)} language="en" title={title} more={name} foot={told} pageOf={(page, pages) => t('page', { page, pages })}>
      <TreatmentPaper rows={rows} said={said} asOf={told} />
    </PaperSheet>,
    title,
  );
}

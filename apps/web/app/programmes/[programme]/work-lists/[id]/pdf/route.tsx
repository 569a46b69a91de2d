import { WorkList } from '@sprigline/contract';
import { getMessages, getTranslations } from 'next-intl/server';
import { SheetPdf } from '../../../../../../features/work-list/sheet-pdf.tsx';
import { sheetWords } from '../../../../../../features/work-list/sheet-words.ts';
import { sayDay, sayMoment, today } from '../../../../../../lib/calendar.ts';
import { nameIn, peopleOf, placesOf } from '../../../../../../lib/lists.ts';
import { pageOf } from '../../../../../../lib/page-address.ts';
import { publicAddress } from '../../../../../../lib/public-address.ts';
import { read } from '../../../../../../lib/read.ts';
import { apiOf, workplaceOf } from '../../../../../../lib/workplace.ts';
import { paperOf } from '../../../../../../ui/paper/paper-size.ts';
import { pdfAnswer } from '../../../../../../ui/paper/pdf-answer.ts';

/** The sheet as a document, `?paper=letter` for the other paper. */
export async function GET(request: Request, { params }: { params: Promise<{ programme: string; id: string }> }): Promise<Response> {
  const { programme, id } = await params;
  const [list, { name, zone }, people, places, { workLists: said }, t, address] = await Promise.all([
    read(apiOf(programme, 'work-lists', id), WorkList), workplaceOf(programme), peopleOf(programme), placesOf(programme), getMessages(), getTranslations('workLists'), publicAddress(),
  ]);
  const { placeId, toPlaceId } = list.asked;
  const cautions: Readonly<Partial<Record<string, string>>> = said.cautions;
  const made = sayDay(today(zone, new Date(list.madeAt)));
  const title = said.kinds[list.kind];
  return pdfAnswer(
    <SheetPdf
      paper={paperOf(new URL(request.url).searchParams)}
      language="en"
      title={title}
      more={[name, placeId === null ? said.everywhere : nameIn(places, placeId), made, t('lines', { n: list.lines.length })].join('  ·  ')}
      foot={t('asOf', { moment: sayMoment(new Date().toISOString(), zone), by: nameIn(people, list.madeBy), day: made })}
      pageOf={(page, pages) => t('page', { page, pages })}
      qrTo={`${address}${pageOf(programme, 'work-lists', id)}/type`}
      list={list}
      words={sheetWords(t)}
      heads={{ ...said.sheet, ...said.boxes }}
      lead={[said.dayAndPeople, ...(toPlaceId === null ? [] : [t('to', { place: nameIn(places, toPlaceId) })])]}
      caution={cautions[list.kind]}
    />,
    `${title} ${made}`,
  );
}

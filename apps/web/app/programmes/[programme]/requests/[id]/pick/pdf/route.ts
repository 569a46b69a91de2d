import { PlantRequest, RequestPlants } from '@sprigline/contract';
import { getMessages, getTranslations } from 'next-intl/server';
import { nothingToPick, pickLines } from '../../../../../../../features/request/pick-lines.ts';
import { pickPaper } from '../../../../../../../features/request/pick-paper.tsx';
import { whoAsks } from '../../../../../../../features/request/who-asks.ts';
import { sayDay } from '../../../../../../../lib/calendar.ts';
import { partnersOf, taxaOf, taxonName } from '../../../../../../../lib/lists.ts';
import { pageOf } from '../../../../../../../lib/page-address.ts';
import { read } from '../../../../../../../lib/read.ts';
import { apiOf, workplaceOf } from '../../../../../../../lib/workplace.ts';
import { paperOf } from '../../../../../../../ui/paper/paper-size.ts';
import { pdfAnswer } from '../../../../../../../ui/paper/pdf-answer.ts';

/** The pick list as PDF. */
export async function GET(asked: Request, { params }: { params: Promise<{ programme: string; id: string }> }): Promise<Response> {
  const { programme, id } = await params;
  const [request, { supplies }, partners, taxa, workplace, { requests: said, words }, t] = await Promise.all([
    read(apiOf(programme, 'requests', id), PlantRequest), read(apiOf(programme, 'requests', id, 'plants'), RequestPlants), partnersOf(programme), taxaOf(programme), workplaceOf(programme), getMessages(), getTranslations('requests'),
  ]);
  const title = t('pickTitle', { name: whoAsks(request, partners) });
  const { lines, isProposed } = pickLines(supplies);
  const paper = pickPaper({
    said, lines, title, empty: nothingToPick(request, said), language: 'en', paper: paperOf(new URL(asked.url).searchParams),
    lead: isProposed ? `${said.pickProposed} ${said.pickLead}` : said.pickLead,
    more: t('whatLine', { n: request.plants, species: taxonName(taxa, request.taxonId), stage: words.stage[request.stage] }),
    foot: t('asOf', { day: sayDay(workplace.today), programme: workplace.name }),
    pageOf: (page, pages) => t('pageOf', { page, pages }),
    qrTo: new URL(pageOf(programme, 'requests', id, request.state === 'gone' ? 'note' : 'despatch'), asked.url).href,
  });
  return pdfAnswer(paper, title);
}

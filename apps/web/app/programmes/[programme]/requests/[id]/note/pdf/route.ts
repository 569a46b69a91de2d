import { DespatchNote } from '@sprigline/contract';
import { getMessages, getTranslations } from 'next-intl/server';
import { noteFacts } from '../../../../../../../features/request/note-facts.ts';
import { notePaper } from '../../../../../../../features/request/note-paper.tsx';
import { sayDay } from '../../../../../../../lib/calendar.ts';
import { pageOf } from '../../../../../../../lib/page-address.ts';
import { read } from '../../../../../../../lib/read.ts';
import { apiOf, workplaceOf } from '../../../../../../../lib/workplace.ts';
import { paperOf } from '../../../../../../../ui/paper/paper-size.ts';
import { pdfAnswer } from '../../../../../../../ui/paper/pdf-answer.ts';

/** The despatch note as PDF. */
export async function GET(asked: Request, { params }: { params: Promise<{ programme: string; id: string }> }): Promise<Response> {
  const { programme, id } = await params;
  const [note, workplace, messages, t] = await Promise.all([
    read(apiOf(programme, 'requests', id, 'despatch'), DespatchNote), workplaceOf(programme), getMessages(), getTranslations('requests'),
  ]);
  const said = messages.requests;
  const sums = { went: t('noteSum', { n: note.plants, donors: note.donorTrees }), asked: t('noteAsked', { n: note.asked }) };
  const paper = notePaper({
    said, note, title: said.noteTitle, language: 'en', paper: paperOf(new URL(asked.url).searchParams),
    facts: noteFacts(note, messages, sums).map(({ term, says }) => `${term}: ${says}`),
    more: workplace.name,
    foot: t('asOf', { day: sayDay(workplace.today), programme: workplace.name }),
    pageOf: (page, pages) => t('pageOf', { page, pages }),
    qrTo: new URL(pageOf(programme, 'requests', id, 'note'), asked.url).href,
  });
  return pdfAnswer(paper, `${said.noteTitle} ${note.to}`);
}

import { DespatchNote } from '@sprigline/contract';
import { getMessages, getTranslations } from 'next-intl/server';
import { noteFacts } from '../../../../../../features/request/note-facts.ts';
import { NoteTable } from '../../../../../../features/request/note-table.tsx';
import { PaperWays } from '../../../../../../features/request/paper-ways.tsx';
import { sayDay } from '../../../../../../lib/calendar.ts';
import { pageOf } from '../../../../../../lib/page-address.ts';
import { read } from '../../../../../../lib/read.ts';
import { titled } from '../../../../../../lib/titled.ts';
import { apiOf, workplaceOf } from '../../../../../../lib/workplace.ts';
import { Caution } from '../../../../../../ui/caution.tsx';
import { Facts } from '../../../../../../ui/facts.tsx';
import { PageHeading } from '../../../../../../ui/page-heading.tsx';
import { Trail } from '../../../../../../ui/trail.tsx';

export const generateMetadata = titled(({ requests }) => requests.noteTitle);

export default async function NotePage({ params }: { params: Promise<{ programme: string; id: string }> }) {
  const { programme, id } = await params;
  const [note, workplace, messages, t] = await Promise.all([
    read(apiOf(programme, 'requests', id, 'despatch'), DespatchNote), workplaceOf(programme), getMessages(), getTranslations('requests'),
  ]);
  const said = messages.requests;
  const sums = { went: t('noteSum', { n: note.plants, donors: note.donorTrees }), asked: t('noteAsked', { n: note.asked }) };
  return (
    <>
      <Trail steps={[{ href: pageOf(programme, 'requests'), words: said.title }, { href: pageOf(programme, 'requests', id), words: note.to }]} />
      <PageHeading kind={workplace.name} lead={said.noteLead}>{said.noteTitle}</PageHeading>
      <Facts facts={noteFacts(note, messages, sums)} />
      <div className="mt-8"><NoteTable programme={programme} note={note} /></div>
      <div className="mt-6"><Caution>{said.caution}</Caution></div>
      <p className="mt-4 text-sm text-ink-soft">{t('asOf', { day: sayDay(workplace.today), programme: workplace.name })}</p>
      <div className="mt-6"><PaperWays pdf={pageOf(programme, 'requests', id, 'note', 'pdf')} csv={apiOf(programme, 'requests', id, 'despatch.csv')} /></div>
    </>
  );
}

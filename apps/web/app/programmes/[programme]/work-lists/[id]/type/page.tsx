import { Workday, WorkList } from '@sprigline/contract';
import { NextIntlClientProvider } from 'next-intl';
import { getMessages, getTranslations } from 'next-intl/server';
import { z } from 'zod';
import { lineWords } from '../../../../../../features/work-list/line-words.ts';
import { sheetWords } from '../../../../../../features/work-list/sheet-words.ts';
import { typeBack } from '../../../../../../features/work-list/type-back.action.ts';
import type { LineToType } from '../../../../../../features/work-list/typing-line.tsx';
import { TypingSheet } from '../../../../../../features/work-list/typing-sheet.tsx';
import { sayDay, sayMoment, today } from '../../../../../../lib/calendar.ts';
import { nameIn, peopleOf, placesOf } from '../../../../../../lib/lists.ts';
import { pageOf } from '../../../../../../lib/page-address.ts';
import { placeChoices } from '../../../../../../lib/place-path.ts';
import { read } from '../../../../../../lib/read.ts';
import { titled } from '../../../../../../lib/titled.ts';
import { apiOf, workplaceOf } from '../../../../../../lib/workplace.ts';
import { choicesOf } from '../../../../../../ui/form/choices.ts';
import { PageHeading } from '../../../../../../ui/page-heading.tsx';
import { Trail } from '../../../../../../ui/trail.tsx';

export const generateMetadata = titled(({ workLists }) => workLists.typeBack);

export default async function TypeBackPage({ params }: { params: Promise<{ programme: string; id: string }> }) {
  const { programme, id } = await params;
  const [list, workplace, people, places, workdays, messages, t] = await Promise.all([
    read(apiOf(programme, 'work-lists', id), WorkList), workplaceOf(programme), peopleOf(programme), placesOf(programme),
    read(`${apiOf(programme, 'workdays')}?limit=20`, z.array(Workday)), getMessages(), getTranslations('workLists'),
  ]);
  const { zone, me } = workplace;
  const words = sheetWords(t);
  const lines = list.lines.map((line): LineToType => {
    const { label, from, place, rows } = lineWords(line, words);
    return {
      number: line.number, batchId: line.batch.id, label, from, place: [place, rows].filter(Boolean).join(', '), held: line.batch.held,
      typed: line.typed && `${sayMoment(line.typed.at, zone)}, ${nameIn(people, line.typed.by)}`,
    };
  });
  return (
    <>
      <Trail steps={[{ href: pageOf(programme, 'work-lists'), words: messages.workLists.title }, { href: pageOf(programme, 'work-lists', id), words: t(`kinds.${list.kind}`) }]} />
      <PageHeading kind={sayDay(today(zone, new Date(list.madeAt)))} lead={t('type.lead')}>{t('type.title', { kind: t(`kinds.${list.kind}`) })}</PageHeading>
      {lines.every(({ typed }) => typed !== null) && <p role="status" className="mb-6 font-semibold">✓ {t('type.allDone')}</p>}
      <NextIntlClientProvider messages={{ ui: messages.ui, workLists: messages.workLists, entries: messages.entries }}>
        <TypingSheet
          programme={programme}
          keptAs={`sprigline/sheet/1/${programme}/${id}/${me.personId}`}
          action={typeBack.bind(null, programme, id, list.kind, lines.filter(({ typed }) => typed === null).map(({ number }) => number))}
          lines={lines}
          kind={list.kind}
          today={workplace.today}
          people={choicesOf(people.filter((person) => person.id !== me.personId))}
          workdays={workdays.map((day) => ({ value: day.id, words: [sayDay(day.day), day.tasks?.slice(0, 60)].filter(Boolean).join(': ') }))}
          places={placeChoices(places)}
          toPlaceId={list.asked.toPlaceId}
        />
      </NextIntlClientProvider>
    </>
  );
}

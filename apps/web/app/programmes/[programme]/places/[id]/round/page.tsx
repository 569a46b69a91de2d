import '../../../../../../features/round/round.css';
import { Round } from '@sprigline/contract';
import type { Metadata } from 'next';
import { NextIntlClientProvider } from 'next-intl';
import { getMessages, getTranslations } from 'next-intl/server';
import { RoundScreen } from '../../../../../../features/round/round-screen.tsx';
import { stopsOf } from '../../../../../../features/round/stop.ts';
import { peopleOf } from '../../../../../../lib/lists.ts';
import { pageOf } from '../../../../../../lib/page-address.ts';
import { read } from '../../../../../../lib/read.ts';
import { workdayChoices } from '../../../../../../lib/workday-choices.ts';
import { apiOf, workplaceOf } from '../../../../../../lib/workplace.ts';
import { ButtonLink } from '../../../../../../ui/button-link.tsx';
import { Empty } from '../../../../../../ui/empty.tsx';
import { PageHeading } from '../../../../../../ui/page-heading.tsx';

interface RoundPageProps {
  readonly params: Promise<{ programme: string; id: string }>;
}

export async function generateMetadata(): Promise<Metadata> {
  return { title: (await getTranslations('round'))('kind') };
}

export default async function RoundPage({ params }: RoundPageProps) {
  const { programme, id } = await params;
  const [round, workplace, people, messages, t] = await Promise.all([
    read(apiOf(programme, 'places', id, 'round'), Round), workplaceOf(programme), peopleOf(programme), getMessages(), getTranslations('round'),
  ]);
  const stops = stopsOf(round);
  const { me, zone, today } = workplace;
  if (stops.length === 0) {
    return (
      <>
        <PageHeading kind={t('kind')}>{t('title', { place: round.place.name })}</PageHeading>
        <Empty act={<ButtonLink href={pageOf(programme, 'places')}>{t('choosePlace')}</ButtonLink>}>{t('empty')}</Empty>
      </>
    );
  }
  const workdays = await workdayChoices(programme, today);
  const others = people.filter((person) => person.id !== me.personId).map((person) => ({ id: person.id, name: person.name }));
  return (
    <NextIntlClientProvider messages={{ ui: messages.ui, words: messages.words, round: messages.round, entries: messages.entries }}>
      <RoundScreen programme={programme} placeId={id} placeName={round.place.name} personId={me.personId} me={me.name} zone={zone} today={today} stops={stops} taps={round.taps} noEntryBefore={round.noEntryBefore} people={others} workdays={workdays} />
    </NextIntlClientProvider>
  );
}

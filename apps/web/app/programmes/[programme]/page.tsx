import { Ours } from '@sprigline/contract';
import { getMessages, getTranslations } from 'next-intl/server';
import { NextIntlClientProvider } from 'next-intl';
import { OursOverview } from '../../../features/ours/ours-overview.tsx';
import { Beginning } from '../../../features/home/beginning.tsx';
import { DuePlaces } from '../../../features/home/due-places.tsx';
import { NotCalled } from '../../../features/home/not-called.tsx';
import { PermissionsEnding } from '../../../features/home/permissions-ending.tsx';
import { Promised } from '../../../features/home/promised.tsx';
import { QuestionsToMe } from '../../../features/home/questions-to-me.tsx';
import { ReviewGroups } from '../../../features/home/review-groups.tsx';
import { RiskList } from '../../../features/home/risk-list.tsx';
import { RoundUnderWay } from '../../../features/home/round-under-way.tsx';
import { StuckPhones } from '../../../features/home/stuck-phones.tsx';
import { TakeUp } from '../../../features/home/take-up.tsx';
import { WhatChanged } from '../../../features/home/what-changed.tsx';
import { placesOf } from '../../../lib/lists.ts';
import { sayDay } from '../../../lib/calendar.ts';
import { read } from '../../../lib/read.ts';
import { titled } from '../../../lib/titled.ts';
import { apiOf, workplaceOf } from '../../../lib/workplace.ts';
import { PageHeading } from '../../../ui/page-heading.tsx';

export const generateMetadata = titled(({ shell }) => shell.items.home);

/** A volunteer's first screen is what is due and the round they are in; a coordinator's what changed, what is at risk, what needs a decision. */
export default async function HomePage({ params }: { params: Promise<{ programme: string }> }) {
  const { programme } = await params;
  const [workplace, t, messages] = await Promise.all([workplaceOf(programme), getTranslations('home'), getMessages()]);
  const { me, today, zone, isDesk } = workplace;
  const heading = <PageHeading kind={sayDay(today, 'long')}>{t('hello', { name: me.name.split(' ')[0] ?? '' })}</PageHeading>;
  if (workplace.role === 'partner') return <>{heading}<OursOverview programme={programme} ours={await read(apiOf(programme, 'ours'), Ours)} /></>;

  const places = await placesOf(programme);
  if (isDesk && places.length === 0) return <>{heading}<Beginning programme={programme} /></>;
  const names = Object.fromEntries(places.map(({ id, name }) => [id, name]));
  return (
    <>
      {heading}
      <NextIntlClientProvider messages={{ home: messages.home, ui: messages.ui }}>
        <RoundUnderWay programme={programme} personId={me.personId} names={walkable(places)} />
      </NextIntlClientProvider>
      <QuestionsToMe programme={programme} zone={zone} names={names} />
      {isDesk && <TakeUp programme={programme} />}
      <DuePlaces programme={programme} today={today} most={isDesk ? 6 : 12} />
      {isDesk && (
        <div className="grid gap-x-12 lg:grid-cols-2">
          <ReviewGroups programme={programme} />
          <StuckPhones programme={programme} zone={zone} />
          <NotCalled programme={programme} today={today} />
          <WhatChanged programme={programme} zone={zone} />
          <Promised programme={programme} />
          <PermissionsEnding programme={programme} />
        </div>
      )}
      <RiskList programme={programme} />
    </>
  );
}

/** Names for the phone: trays are too many to send, and a round of one is called so by its own page. */
const walkable = (places: Awaited<ReturnType<typeof placesOf>>): Readonly<Record<string, string>> =>
  Object.fromEntries(places.filter(({ kind }) => kind !== 'tray' && kind !== 'plot').map(({ id, name }) => [id, name]));

import { getMessages, getTranslations } from 'next-intl/server';
import { Beginning } from '../../../features/home/beginning.tsx';
import { PlacesToWalk } from '../../../features/home/places-to-walk.tsx';
import { RiskList } from '../../../features/home/risk-list.tsx';
import { ReviewCount } from '../../../features/home/review-count.tsx';
import { LastTrips } from '../../../features/home/last-trips.tsx';
import { placesOf } from '../../../lib/lists.ts';
import { sayDay } from '../../../lib/calendar.ts';
import { titled } from '../../../lib/titled.ts';
import { workplaceOf } from '../../../lib/workplace.ts';
import { PageHeading } from '../../../ui/page-heading.tsx';

export const generateMetadata = titled(({ shell }) => shell.items.home);

/** A volunteer's first screen is where to walk; a coordinator's is what needs a decision, what is at risk, what changed. */
export default async function HomePage({ params }: { params: Promise<{ programme: string }> }) {
  const { programme } = await params;
  const [workplace, t, { home: said }] = await Promise.all([workplaceOf(programme), getTranslations('home'), getMessages()]);
  const heading = <PageHeading kind={sayDay(workplace.today, 'long')}>{t('hello', { name: workplace.me.name.split(' ')[0] ?? '' })}</PageHeading>;
  if (workplace.role === 'partner') return <>{heading}<p className="max-w-prose">{said.partner}</p></>;

  const places = await placesOf(programme);
  const isFresh = places.length === 0;
  return (
    <>
      {heading}
      {workplace.isDesk && isFresh && <Beginning programme={programme} />}
      {workplace.isDesk && !isFresh && <ReviewCount programme={programme} />}
      <PlacesToWalk programme={programme} places={places} />
      {!isFresh && <RiskList programme={programme} />}
      {workplace.isDesk && !isFresh && <LastTrips programme={programme} />}
    </>
  );
}

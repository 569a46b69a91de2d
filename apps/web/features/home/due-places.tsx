import { DuePlaces as Answer, type DuePlace } from '@sprigline/contract';
import { useTranslations } from 'next-intl';
import { getMessages, getTranslations } from 'next-intl/server';
import { dayAfter, daysFrom, sayDay } from '../../lib/calendar.ts';
import { pageOf } from '../../lib/page-address.ts';
import { read } from '../../lib/read.ts';
import { apiOf } from '../../lib/workplace.ts';
import { Flag } from '../../ui/flag.tsx';
import { RowLink } from '../../ui/row-link.tsx';
import { Section } from '../../ui/section.tsx';
import { Way } from '../../ui/way.tsx';

interface DuePlacesProps {
  readonly programme: string;
  readonly today: string;
  /** So many places fit a glance. */
  readonly most: number;
}

/** Where to go: the places with something due this week, the nearest day first. Each leads straight into its round. */
export async function DuePlaces({ programme, today, most }: DuePlacesProps) {
  const query = new URLSearchParams({ until: dayAfter(today, 7), limit: String(most) });
  const [{ places, more, items }, { home: said }, t] = await Promise.all([read(`${apiOf(programme, 'due', 'places')}?${query}`, Answer), getMessages(), getTranslations('home')]);
  return (
    <Section heading={said.due} lead={places.length > 0 && said.dueLead}>
      {places.length === 0 && <p className="text-ink-soft">{said.noDue}</p>}
      <ul className="grid gap-3 sm:grid-cols-2">
        {places.map((place) => (
          <li key={place.walk.id}>
            <PlaceCard programme={programme} today={today} place={place} />
          </li>
        ))}
      </ul>
      <p className="mt-4 flex flex-wrap gap-x-6">
        <RowLink href={pageOf(programme, 'due')}>{items > 0 ? t('allDue', { n: items, more }) : said.laterDue}</RowLink>
        <RowLink href={pageOf(programme, 'places')}>{said.allPlaces}</RowLink>
      </p>
    </Section>
  );
}

/** A place of which one thing is due leads into its round; the lesser things are named. */
function PlaceCard({ programme, today, place: { walk, path, day, kinds } }: { programme: string; today: string; place: DuePlace }) {
  const t = useTranslations('home');
  const counts = useTranslations('due.counts');
  const late = daysFrom(day, today);
  return (
    <Way href={pageOf(programme, 'places', walk.id, 'round')} className="walk-card">
      <span className="min-w-0">
        <span className="block text-lg font-semibold">{walk.name}</span>
        <span className="block text-sm text-ink-soft">{path.join(' › ')}</span>
        <span className="block text-sm">{kinds.map(({ kind, n }) => counts(kind, { n })).join(', ')}</span>
      </span>
      <span className="shrink-0 text-right">{late > 0 ? <Flag tone={late > 14 ? 'grave' : 'look'}>{t('lateBy', { n: late })}</Flag> : late === 0 ? <Flag tone="look">{t('dueToday')}</Flag> : <span className="text-sm whitespace-nowrap text-ink-soft">{sayDay(day)}</span>}</span>
    </Way>
  );
}

import { TripInList } from '@sprigline/contract';
import { getMessages, getTranslations } from 'next-intl/server';
import { z } from 'zod';
import { sayDay } from '../../lib/calendar.ts';
import { nameIn, standsOf } from '../../lib/lists.ts';
import { pageOf } from '../../lib/page-address.ts';
import { read } from '../../lib/read.ts';
import { apiOf } from '../../lib/workplace.ts';
import { RowLink } from '../../ui/row-link.tsx';
import { Section } from '../../ui/section.tsx';

/** What came in lately. */
export async function LastTrips({ programme }: { programme: string }) {
  const [trips, stands, { home: said }, t] = await Promise.all([
    read(`${apiOf(programme, 'trips')}?limit=4`, z.array(TripInList)), standsOf(programme), getMessages(), getTranslations('home'),
  ]);
  return (
    <Section heading={said.trips}>
      {trips.length === 0 && <p className="text-ink-soft">{said.noTrips}</p>}
      <ul className="grid gap-2">
        {trips.map(({ id, wentOn, standId, donorTrees, cuttings }) => (
          <li key={id} className="flex flex-wrap items-baseline gap-x-3">
            <RowLink href={pageOf(programme, 'trips', id)}>{`${nameIn(stands, standId)}, ${sayDay(wentOn)}`}</RowLink>
            <span className="text-sm text-ink-soft">{t('trees', { n: donorTrees })}, {t('cuttings', { n: cuttings })}</span>
          </li>
        ))}
      </ul>
    </Section>
  );
}

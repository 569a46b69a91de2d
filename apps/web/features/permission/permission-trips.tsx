import type { Stand, TripInList } from '@sprigline/contract';
import { useTranslations } from 'next-intl';
import { sayDay } from '../../lib/calendar.ts';
import { nameIn } from '../../lib/lists.ts';
import { pageOf } from '../../lib/page-address.ts';
import { LinkList } from '../../ui/link-list.tsx';
import { Section } from '../../ui/section.tsx';

interface PermissionTripsProps {
  readonly programme: string;
  readonly trips: readonly TripInList[];
  readonly stands: readonly Stand[];
}

/** The trips that used a permission up, the last one first. */
export function PermissionTrips({ programme, trips, stands }: PermissionTripsProps) {
  const t = useTranslations('permissions');
  const links = trips.map(({ id, standId, wentOn, cuttings, donorTrees }) => ({
    href: pageOf(programme, 'trips', id),
    words: t('tripLine', { stand: nameIn(stands, standId), day: sayDay(wentOn), n: cuttings, trees: donorTrees }),
  }));
  return <Section heading={t('trips')}><LinkList links={links} none={t('noTrips')} /></Section>;
}

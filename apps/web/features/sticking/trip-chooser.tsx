import type { Stand, TripInList } from '@sprigline/contract';
import { useMessages, useTranslations } from 'next-intl';
import { sayDay } from '../../lib/calendar.ts';
import { nameIn } from '../../lib/lists.ts';
import { pageOf } from '../../lib/page-address.ts';
import { ButtonLink } from '../../ui/button-link.tsx';
import { Empty } from '../../ui/empty.tsx';
import { Section } from '../../ui/section.tsx';
import { Way } from '../../ui/way.tsx';
import type { Route } from 'next';

/** The trips whose bundles may lie on the bench, the newest first. A label that was scanned is carried along. */
export function TripChooser({ programme, trips, stands, label }: { programme: string; trips: readonly TripInList[]; stands: readonly Stand[]; label?: string | undefined }) {
  const said = useMessages().sticking;
  const t = useTranslations('sticking');
  return (
    <Section heading={said.chooseTrip}>
      {trips.length === 0 && <Empty act={<ButtonLink href={pageOf(programme, 'trips', 'new')}>{said.addTrip}</ButtonLink>}>{said.noTrips}</Empty>}
      <ul className="grid gap-3 sm:grid-cols-2">
        {trips.map(({ id, standId, wentOn, donorTrees, cuttings }) => (
          <li key={id}>
            <Way href={`${pageOf(programme, 'stick')}?${new URLSearchParams({ tripId: id, ...(label ? { label } : {}) })}` as Route} className="flex min-h-16 flex-col justify-center rounded-md border border-line bg-sheet px-4 py-3 no-underline hover:bg-lichen">
              <span className="text-lg font-semibold">{t('of', { stand: nameIn(stands, standId), day: sayDay(wentOn) })}</span>
              <span className="text-sm text-ink-soft">{t('trees', { n: donorTrees })}, {t('cuttings', { n: cuttings })}</span>
            </Way>
          </li>
        ))}
      </ul>
    </Section>
  );
}

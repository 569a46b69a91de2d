import type { Trace } from '@sprigline/contract';
import { useMessages, useTranslations } from 'next-intl';
import { sayDay } from '../../lib/calendar.ts';
import { pageOf } from '../../lib/page-address.ts';
import { Caution } from '../../ui/caution.tsx';
import { Facts } from '../../ui/facts.tsx';
import { RowLink } from '../../ui/row-link.tsx';
import { Section } from '../../ui/section.tsx';
import type { ReactNode } from 'react';

/** How much was found, what to do if it is a disease, and the wild trees at the beginning. */
export function TraceHead({ programme, trace }: { programme: string; trace: Trace }) {
  const { trace: said } = useMessages();
  const t = useTranslations('trace');
  const { subject: { from, until }, sums, donorTrees, trips } = trace;
  return (
    <>
      <div className="mb-6 grid max-w-prose gap-2">
        <p className="text-ink-soft">{t('asOf', { day: sayDay(trace.asOf) })}</p>
        {(from ?? until) !== null && <p>{t('between', { from: from === null ? 'none' : sayDay(from), until: until === null ? 'none' : sayDay(until) })}</p>}
        <p className="font-semibold">{t('sums', { batches: sums.batches, plants: sums.plants, beside: sums.beside, outside: sums.givenOutside })}</p>
        {trace.isCut && <p role="status" className="font-semibold">{said.cut}</p>}
      </div>
      <div className="mb-8"><Caution>{said.caution}</Caution></div>
      <Section heading={said.origin}>
        <Facts
          facts={[
            { term: said.trees, says: donorTrees.length === 0 ? said.noTrees : (
              <Several>{donorTrees.map((tree) => <RowLink key={tree.id} href={pageOf(programme, 'donor-trees', tree.id)}>{t(tree.perhaps ? 'perhapsTree' : 'treeOf', { label: tree.label, stand: tree.stand })}</RowLink>)}</Several>
            ) },
            { term: said.trips, says: trips.length === 0 ? said.noTrips : (
              <Several>{trips.map((trip) => <RowLink key={trip.id} href={pageOf(programme, 'trips', trip.id)}>{t('tripOf', { stand: trip.stand, day: sayDay(trip.wentOn) })}</RowLink>)}</Several>
            ) },
          ]}
        />
      </Section>
    </>
  );
}

const Several = ({ children }: { children: ReactNode }) => <span className="flex max-h-80 flex-wrap gap-x-4 overflow-y-auto print:max-h-none">{children}</span>;

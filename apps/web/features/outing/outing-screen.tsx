'use client';

import { useTranslations } from 'next-intl';
import { useState } from 'react';
import { sayDay } from '../../lib/calendar.ts';
import { fieldAddress } from '../../lib/field-address.ts';
import type { Made, MadeBundle, MadeTrip } from '../../lib/phone/made.ts';
import { buttonClass } from '../../ui/button-class.ts';
import { PageHeading } from '../../ui/page-heading.tsx';
import { TreeForm } from './tree-form.tsx';
import { TripForm } from './trip-form.tsx';
import { type Outing, useOuting } from './use-outing.ts';

interface Kept {
  readonly label: string;
  readonly isPlaced: boolean;
  /** Counts what was kept: each tree begins with empty fields, and nothing of the place before is left in them. */
  readonly turn: number;
}

/** A collecting trip without a signal: the trip, then tree after tree. @param treeId one whose label was scanned: the trip goes there */
export function OutingScreen({ programme, treeId }: { programme: string; treeId?: string | undefined }) {
  const t = useTranslations('outing');
  const field = useTranslations('field');
  const { outing, setMade } = useOuting(programme);
  const [tripId, setTripId] = useState<string>();
  const way = <p><a href={fieldAddress(programme)} className="inline-flex min-h-14 items-center underline">{field('title')}</a></p>;
  if (outing === undefined) return <p role="status">{field('opening')}</p>;
  if (outing === 'none') {
    return <>{way}<PageHeading>{t('title')}</PageHeading><p role="alert" className="max-w-prose">{t('notPacked')}</p></>;
  }
  const trip = outing.made.trips.find(({ id }) => id === tripId);
  const tree = outing.pack.donorTrees.find(({ id }) => id === treeId);
  const begun = (id: string, made: Made): void => {
    setMade(made);
    setTripId(id);
    window.scrollTo(0, 0);
  };
  return (
    <>
      {way}
      {trip
        ? <OnTrip key={trip.id} programme={programme} outing={outing} trip={trip} treeId={tree?.id} setMade={setMade} leave={() => setTripId(undefined)} />
        : (
          <>
            <PageHeading lead={t('lead')}>{t('title')}</PageHeading>
            {tree && <p role="status" className="mb-6 rounded-md border-2 border-line-strong bg-sheet p-4"><strong>{tree.label}</strong>: {t(tree.state === 'dead' ? 'scannedDead' : 'scanned')}</p>}
            <Begun outing={outing} standId={tree?.standId} goOn={setTripId} />
            <h2 className="mb-4 text-xl">{t('new')}</h2>
            <TripForm programme={programme} outing={outing} standId={tree?.standId} begun={begun} />
          </>
        )}
    </>
  );
}

/** Trips of the last days, to go on with. @param standId only those to that stand */
function Begun({ outing: { made, pack }, standId, goOn }: { outing: Outing; standId: string | undefined; goOn: (tripId: string) => void }) {
  const t = useTranslations('outing');
  const trips = made.trips.filter((trip) => standId === undefined || trip.standId === standId).slice(0, 3);
  if (trips.length === 0) return null;
  return (
    <section aria-labelledby="begun" className="mb-8">
      <h2 id="begun" className="text-xl">{t('begun')}</h2>
      <ul className="mt-3 grid gap-3">
        {trips.map((trip) => <li key={trip.id} className="grid"><button type="button" onClick={() => goOn(trip.id)} className={buttonClass('quiet')}>{t('goOn', { name: nameOf(t, pack, trip) })}</button></li>)}
      </ul>
    </section>
  );
}

interface OnTripProps {
  readonly programme: string;
  readonly outing: Outing;
  readonly trip: MadeTrip;
  readonly treeId: string | undefined;
  readonly setMade: (made: Made) => void;
  readonly leave: () => void;
}

function OnTrip({ programme, outing, trip, treeId, setMade, leave }: OnTripProps) {
  const t = useTranslations('outing');
  const [last, setLast] = useState<Kept>();
  const kept = (made: Made, label: string, isPlaced: boolean): void => {
    setMade(made);
    setLast((before) => ({ label, isPlaced, turn: (before?.turn ?? 0) + 1 }));
    window.scrollTo(0, 0);
  };
  return (
    <>
      <PageHeading kind={t('title')} lead={t('onTripLead')}>{nameOf(t, outing.pack, trip)}</PageHeading>
      <div role="status" className="empty:hidden">
        {last && (
          <p key={last.turn} className="mb-6 rounded-md border-2 border-juniper bg-lichen p-4 text-on-lichen">
            ✓ {t('kept', { label: last.label })} {last.isPlaced && <strong className="block">{t('sealed')}</strong>}
          </p>
        )}
      </div>
      <Taken bundles={outing.made.bundles.filter(({ tripId }) => tripId === trip.id)} />
      <h2 className="mb-4 text-xl">{t('nextTree')}</h2>
      <TreeForm key={last?.turn ?? 0} programme={programme} outing={outing} trip={trip} treeId={last ? undefined : treeId} kept={kept} />
      <p className="mt-8"><a href={fieldAddress(programme, 'scan')} className={buttonClass('quiet')}>{t('scan')}</a></p>
      <p className="mt-8"><button type="button" onClick={leave} className={buttonClass('quiet')}>{t('leave')}</button></p>
    </>
  );
}

/** What was cut on this trip, as told on this phone. */
function Taken({ bundles }: { bundles: readonly MadeBundle[] }) {
  const t = useTranslations('outing');
  if (bundles.length === 0) return null;
  return (
    <section aria-labelledby="taken" className="mb-8">
      <h2 id="taken" className="text-xl">{t('taken')}</h2>
      <ul className="mt-2 grid gap-2">
        {bundles.map(({ id, label, cuttings }) => (
          <li key={id} className="flex justify-between gap-3 rounded-md border border-line bg-sheet px-3 py-2"><strong>{label}</strong> <span>{t('cuttings', { n: cuttings })}</span></li>
        ))}
      </ul>
    </section>
  );
}

const nameOf = (t: (key: 'name', values: { stand: string; day: string }) => string, pack: Outing['pack'], { standId, wentOn }: MadeTrip): string =>
  t('name', { stand: pack.stands.find(({ id }) => id === standId)?.name ?? '', day: sayDay(wentOn) });

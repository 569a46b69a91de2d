'use client';

import { useTranslations } from 'next-intl';
import { lazy, type ReactNode, Suspense } from 'react';
import { FieldApp } from '../../features/field/field-app.tsx';
import type { FieldRoute } from '../../features/field/field-route.ts';
import { OutboxLine } from '../../features/outbox/outbox-line.tsx';
import { PackedRound } from '../../features/round/packed-round.tsx';
import { IdleLock } from '../../features/who-logs/idle-lock.tsx';
import { fieldAddress } from '../../lib/field-address.ts';
import { whenUsed } from '../../lib/when-used.ts';

const WhoLogs = whenUsed(() => import('../../features/who-logs/who-logs.tsx').then((file) => file.WhoLogs));
const PrivateNotice = whenUsed(() => import('../../features/outbox/private-notice.tsx').then((file) => file.PrivateNotice));
const StorageNotice = whenUsed(() => import('../../features/outbox/storage-notice.tsx').then((file) => file.StorageNotice));
const WhoLine = whenUsed(() => import('../../features/who-logs/who-line.tsx').then((file) => file.WhoLine));

// Fetched and kept with the page, and read only by whoever goes there: a walk opens sooner.
const OutboxScreen = lazy(() => import('../../features/outbox/outbox-screen.tsx').then((screen) => ({ default: screen.OutboxScreen })));
const OutingScreen = lazy(() => import('../../features/outing/outing-screen.tsx').then((screen) => ({ default: screen.OutingScreen })));
const ActScreen = lazy(() => import('../../features/act/act-screen.tsx').then((screen) => ({ default: screen.ActScreen })));
const NewHere = lazy(() => import('../../features/act/new-here.tsx').then((screen) => ({ default: screen.NewHere })));
const PlaceNote = lazy(() => import('../../features/act/place-note.tsx').then((screen) => ({ default: screen.PlaceNote })));
const ScanHere = lazy(() => import('../../features/scan-here/scan-here.tsx').then((screen) => ({ default: screen.ScanHere })));
const ClaimHere = lazy(() => import('../../features/scan-here/claim-here.tsx').then((screen) => ({ default: screen.ClaimHere })));
const StickScreen = lazy(() => import('../../features/act/stick-screen.tsx').then((screen) => ({ default: screen.StickScreen })));

/** The routes of what works without a signal. @param address the one that labels are printed with */
export function FieldScreens({ address }: { address: string }) {
  return (
    <FieldApp
      line={<OutboxLine />}
      whoLogs={(programme) => <Suspense><WhoLogs programme={programme} /></Suspense>}
      warning={<Suspense><PrivateNotice /></Suspense>}
      storage={<Suspense><StorageNotice /></Suspense>}
      lock={(programme, screen) => <IdleLock programme={programme}>{screen}</IdleLock>}
      screens={(route, chosen) => (
        <>
          {/* On a walk every line is for the batch: the name stands in its head. */}
          {route.screen !== 'outbox' && route.screen !== 'round' && route.screen !== 'list' && <Suspense><WhoLine programme={route.programme} /></Suspense>}
          <Later>{screenOf(route, chosen, address)}</Later>
        </>
      )}
    />
  );
}

/** @param chosen who logs: for somebody else a screen is made anew, except a trip, which goes on */
function screenOf(route: Exclude<FieldRoute, { screen: 'home' | 'pack' }>, chosen: string, address: string): ReactNode {
  if (route.screen === 'outbox') return <OutboxScreen />;
  const { programme } = route;
  if (route.screen === 'trip') return <OutingScreen key={`${programme}/${route.id}`} programme={programme} treeId={route.id} />;
  if (route.screen === 'stick') return <StickScreen key={`${programme}/${chosen}/${route.id}`} programme={programme} label={route.id} homeHref={fieldAddress(programme)} />;
  if (route.screen === 'scan') return <ScanHere key={`${programme}/${route.id}`} programme={programme} walkId={route.id} address={address} />;
  const { id } = route;
  if (route.screen === 'claim') return <ClaimHere key={id} programme={programme} code={id} walkId={route.walkId} />;
  if (route.screen === 'batch') return <ActScreen key={`${route.batchId}/${chosen}`} programme={programme} walkId={id} batchId={route.batchId} label={route.label} />;
  if (route.screen === 'note') return <PlaceNote key={`${id}/${chosen}`} programme={programme} walkId={id} />;
  return (
    <PackedRound
      key={`${id}/${route.batchId}/${chosen}`}
      programme={programme}
      kind={route.screen === 'list' ? 'work-lists' : 'places'}
      id={id}
      batchId={route.batchId}
      homeHref={fieldAddress(programme)}
      scanHref={fieldAddress(programme, 'scan', id)}
      actHref={(batchId) => fieldAddress(programme, 'batch', id, batchId)}
      below={<Suspense><NewHere programme={programme} walkId={id} /></Suspense>}
    />
  );
}

function Later({ children }: { children: ReactNode }) {
  const t = useTranslations('field');
  return <Suspense fallback={<p role="status">{t('opening')}</p>}>{children}</Suspense>;
}

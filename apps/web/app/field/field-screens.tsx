'use client';

import { useTranslations } from 'next-intl';
import { lazy, type ReactNode, Suspense } from 'react';
import { FieldApp } from '../../features/field/field-app.tsx';
import { OutboxLine } from '../../features/outbox/outbox-line.tsx';
import { OutboxScreen } from '../../features/outbox/outbox-screen.tsx';
import { PackedRound } from '../../features/round/packed-round.tsx';
import { IdleLock } from '../../features/who-logs/idle-lock.tsx';
import { fieldAddress } from '../../lib/field-address.ts';
import { whenUsed } from '../../lib/when-used.ts';

const WhoLogs = whenUsed(() => import('../../features/who-logs/who-logs.tsx').then((file) => file.WhoLogs));
const WhoLine = whenUsed(() => import('../../features/who-logs/who-line.tsx').then((file) => file.WhoLine));

/** Fetched and kept with the page, and read only by whoever goes on a trip. */
const OutingScreen = lazy(() => import('../../features/outing/outing-screen.tsx').then((screen) => ({ default: screen.OutingScreen })));

/** The routes of what works without a signal. */
export function FieldScreens() {
  return (
    <FieldApp
      line={<OutboxLine />}
      whoLogs={(programme) => <Suspense><WhoLogs programme={programme} /></Suspense>}
      lock={(programme, screen) => <IdleLock programme={programme}>{screen}</IdleLock>}
      screens={(route, chosen) => {
        if (route.screen === 'outbox') return <OutboxScreen />;
        const key = `${'id' in route ? route.id : route.programme}/${chosen}`;
        return (
          <>
            <Suspense><WhoLine programme={route.programme} /></Suspense>
            {route.screen === 'trip'
              ? <Later><OutingScreen key={route.programme} programme={route.programme} /></Later>
              : <PackedRound key={key} programme={route.programme} kind={route.screen === 'list' ? 'work-lists' : 'places'} id={route.id} homeHref={fieldAddress(route.programme)} />}
          </>
        );
      }}
    />
  );
}

function Later({ children }: { children: ReactNode }) {
  const t = useTranslations('field');
  return <Suspense fallback={<p role="status">{t('opening')}</p>}>{children}</Suspense>;
}

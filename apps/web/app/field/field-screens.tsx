'use client';

import { useTranslations } from 'next-intl';
import { lazy, type ReactNode, Suspense } from 'react';
import { FieldApp } from '../../features/field/field-app.tsx';
import { OutboxLine } from '../../features/outbox/outbox-line.tsx';
import { OutboxScreen } from '../../features/outbox/outbox-screen.tsx';
import { PackedRound } from '../../features/round/packed-round.tsx';
import { fieldAddress } from '../../lib/field-address.ts';

/** Fetched and kept with the page, and read only by whoever goes on a trip. */
const OutingScreen = lazy(() => import('../../features/outing/outing-screen.tsx').then((screen) => ({ default: screen.OutingScreen })));

/** The routes of what works without a signal. */
export function FieldScreens() {
  return (
    <FieldApp
      line={<OutboxLine />}
      screens={(route) => {
        if (route.screen === 'outbox') return <OutboxScreen />;
        if (route.screen === 'trip') return <Later><OutingScreen key={route.programme} programme={route.programme} /></Later>;
        return <PackedRound key={route.id} programme={route.programme} kind={route.screen === 'list' ? 'work-lists' : 'places'} id={route.id} homeHref={fieldAddress(route.programme)} />;
      }}
    />
  );
}

function Later({ children }: { children: ReactNode }) {
  const t = useTranslations('field');
  return <Suspense fallback={<p role="status">{t('opening')}</p>}>{children}</Suspense>;
}

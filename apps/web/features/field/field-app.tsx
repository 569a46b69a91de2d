'use client';

import { useTranslations } from 'next-intl';
import { lazy, type ReactNode, Suspense, useEffect, useState } from 'react';
import { onNews } from '../../lib/phone/news.ts';
import { chosenAuthor } from '../../lib/phone/device.ts';
import { theStore } from '../../lib/phone/store.ts';
import { FieldHome } from './field-home.tsx';
import { type FieldRoute, routeIn } from './field-route.ts';

// Wants a signal, so a walk does without it.
const PackPlaces = lazy(() => import('./pack-places.tsx').then((screen) => ({ default: screen.PackPlaces })));

interface FieldAppProps {
  /** What stands above every screen: what is only on this phone. */
  readonly line: ReactNode;
  /** Screens of other features. */
  readonly screens: (route: Exclude<FieldRoute, { screen: 'home' | 'pack' }>, chosen: string) => ReactNode;
  /** Who logs in a programme, to be changed by a tap. */
  readonly whoLogs: (programme: string) => ReactNode;
  /** What has to be known before anything is tapped in. */
  readonly warning: ReactNode;
  /** How safe what is kept here is from the browser itself. */
  readonly storage: ReactNode;
  /** Put around what is on the screen. */
  readonly lock: (programme: string | undefined, screen: ReactNode) => ReactNode;
}

/** Everything that works without a signal: one page, whose screens stand behind the # of its address. */
export function FieldApp(props: FieldAppProps) {
  const t = useTranslations('field');
  const [route, setRoute] = useState<FieldRoute>();
  const [isBroken, setBroken] = useState(false);
  const isOnline = useOnline();
  const programme = route && 'programme' in route ? route.programme : undefined;
  const chosen = useChosen(programme);

  useEffect(() => {
    const look = (): void => {
      setRoute(routeIn(window.location.hash));
      window.scrollTo(0, 0);
    };
    look();
    theStore().catch(() => setBroken(true));
    window.addEventListener('hashchange', look);
    return () => window.removeEventListener('hashchange', look);
  }, []);

  return (
    <main id="main" tabIndex={-1} className="mx-auto max-w-2xl px-4 py-4 outline-none">
      {props.line}
      {!isOnline && <p role="status" className="offline-line mb-4 rounded-md border-2 border-on-straw bg-straw px-3 py-2 font-semibold text-on-straw">{t('offline')}</p>}
      {isBroken && <p role="alert" className="mb-4 rounded-md border-2 border-rust bg-rust-wash p-3 font-semibold text-rust">{t('broken')}</p>}
      {route === undefined || chosen === undefined ? <p role="status">{t('opening')}</p> : props.lock(programme, screenOf(route, props, chosen))}
    </main>
  );
}

function screenOf(route: FieldRoute, { screens, whoLogs, warning, storage }: FieldAppProps, chosen: string): ReactNode {
  if (route.screen === 'home') return <FieldHome only={route.programme} whoLogs={whoLogs} warning={warning} storage={storage} />;
  if (route.screen === 'pack') return <Suspense><PackPlaces programme={route.programme} /></Suspense>;
  return screens(route, chosen);
}

/** `false` is sure, `true` only says that there is some network. */
function useOnline(): boolean {
  const [isOnline, setOnline] = useState(true);
  useEffect(() => {
    const look = (): void => setOnline(navigator.onLine);
    look();
    window.addEventListener('online', look);
    window.addEventListener('offline', look);
    return () => {
      window.removeEventListener('online', look);
      window.removeEventListener('offline', look);
    };
  }, []);
  return isOnline;
}

/** Whom somebody chose to log in a programme: an id, or nothing chosen as an empty one; nothing at all while it is looked up. */
function useChosen(programme: string | undefined): string | undefined {
  const [found, setFound] = useState<{ readonly programme: string | undefined; readonly chosen: string }>();
  useEffect(() => {
    const look = async (): Promise<string> => (programme === undefined ? '' : ((await chosenAuthor(await theStore(), programme))?.personId ?? ''));
    const again = (): void => void look().then((chosen) => setFound({ programme, chosen }), () => setFound({ programme, chosen: '' }));
    again();
    return onNews(again);
  }, [programme]);
  return found?.programme === programme ? found?.chosen : undefined;
}

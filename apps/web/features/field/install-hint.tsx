import { useTranslations } from 'next-intl';
import { useEffect, useState } from 'react';
import { buttonClass } from '../../ui/button-class.ts';

/** What browsers that can install by a button tell us; others have to be told what to do. */
interface InstallOffer extends Event {
  prompt: () => Promise<unknown>;
}

type Way = InstallOffer | 'ios' | undefined;

/** How to put the app on the home screen, said while it is not there. */
export function InstallHint() {
  const t = useTranslations('field');
  const [way, setWay] = useState<Way>();
  useEffect(() => {
    if (window.matchMedia('(display-mode: standalone)').matches) return;
    // Only Safari of a phone or tablet has that word.
    if ('standalone' in navigator) setWay(navigator.standalone === true ? undefined : 'ios');
    const offered = (event: Event): void => {
      event.preventDefault();
      setWay(event as InstallOffer);
    };
    window.addEventListener('beforeinstallprompt', offered);
    return () => window.removeEventListener('beforeinstallprompt', offered);
  }, []);
  if (way === undefined) return null;
  return (
    <div className="mb-4 grid gap-2 rounded-md border border-line-strong bg-sheet p-4">
      <p>{way === 'ios' ? t('installIos') : t('install')}</p>
      {way !== 'ios' && <button type="button" onClick={() => void way.prompt().then(() => setWay(undefined))} className={buttonClass('quiet')}>{t('home')}</button>}
    </div>
  );
}

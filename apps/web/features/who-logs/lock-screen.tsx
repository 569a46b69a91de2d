import { useTranslations } from 'next-intl';
import { type KeyboardEvent, useEffect, useState } from 'react';
import { allPacked } from '../../lib/phone/packing.ts';
import { theStore } from '../../lib/phone/store.ts';
import { buttonClass } from '../../ui/button-class.ts';
import { useNewHeading } from '../../ui/use-new-heading.ts';
import { somebodyIsHere } from './watch-idle.ts';
import { WhoList } from './who-list.tsx';

interface LockScreenProps {
  readonly programme: string | undefined;
  readonly open: () => void;
}

/** Who is there? Keys typed here reach nothing of what lies behind. */
export function LockScreen({ programme, open: unlock }: LockScreenProps) {
  const open = (): void => (somebodyIsHere(), unlock());
  const t = useTranslations('whoLogs');
  const programmes = useProgrammes(programme);
  const top = useNewHeading();
  useEffect(() => {
    const keepOut = (event: globalThis.KeyboardEvent): void => {
      if (event.target === document.body) event.stopImmediatePropagation();
    };
    window.addEventListener('keydown', keepOut, true);
    return () => window.removeEventListener('keydown', keepOut, true);
  }, []);
  return (
    <section aria-labelledby="who-is-here" onKeyDown={(event: KeyboardEvent) => event.stopPropagation()} className="grid gap-4">
      <h1 id="who-is-here" ref={top} tabIndex={-1} className="text-2xl outline-none">{t('locked')}</h1>
      <p className="max-w-prose">{t('lockedLead')}</p>
      {programmes?.map(({ handle, name }) => (
        <div key={handle}>
          {programmes.length > 1 && <h2 className="mb-2 text-xl">{name}</h2>}
          <WhoList programme={handle} done={open} />
        </div>
      ))}
      {programmes?.length === 0 && <button type="button" onClick={open} className={buttonClass()}>{t('nobodyKnown')}</button>}
    </section>
  );
}

function useProgrammes(only: string | undefined): readonly { readonly handle: string; readonly name: string }[] | undefined {
  const [programmes, setProgrammes] = useState<readonly { readonly handle: string; readonly name: string }[]>();
  useEffect(() => {
    theStore().then(allPacked).then(({ packs }) => {
      const all = packs.map((pack) => pack.programme);
      const some = all.filter(({ handle }) => handle === only);
      setProgrammes(some.length > 0 ? some : all);
    }, () => setProgrammes([]));
  }, [only]);
  return programmes;
}

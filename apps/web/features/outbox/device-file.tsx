import { useTranslations } from 'next-intl';
import { type ChangeEvent, useState } from 'react';
import { announce } from '../../lib/phone/news.ts';
import { type NotTakenUp, takeUp } from '../../lib/phone/rescue-file.ts';
import { theStore } from '../../lib/phone/store.ts';
import { buttonClass } from '../../ui/button-class.ts';
import { saveFile } from './save-file.ts';

/** Carries what is only on one phone to another machine, as a file. */
export function DeviceFile({ hasItems }: { hasItems: boolean }) {
  const t = useTranslations('outbox');
  const [taken, setTaken] = useState<number | NotTakenUp>();

  async function load({ target }: ChangeEvent<HTMLInputElement>): Promise<void> {
    const [file] = target.files ?? [];
    if (!file) return;
    setTaken(await takeUp(await theStore(), await file.text(), Date.now()));
    target.value = '';
    announce();
  }

  return (
    <section className="mt-8 grid gap-3">
      <p className="text-sm text-ink-soft">{t(hasItems ? 'fileLead' : 'takeUpLead')}</p>
      {hasItems && <button type="button" onClick={() => void saveFile()} className={buttonClass('quiet')}>{t('file')}</button>}
      <label className={`${buttonClass('quiet')} has-focus-visible:outline-3`}>
        {t('takeUp')}
        <input type="file" accept="application/json,.json" onChange={(event) => void load(event)} className="sr-only" />
      </label>
      <p role="status" className="font-semibold empty:hidden">{taken === undefined ? '' : typeof taken === 'number' ? t('tookUp', { n: taken }) : t(`notTakenUp.${taken}`)}</p>
    </section>
  );
}

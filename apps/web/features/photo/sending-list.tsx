'use client';

import { useTranslations } from 'next-intl';
import { buttonClass } from '../../ui/button-class.ts';
import type { Sending } from './sendings.ts';

/** How far each chosen photo is, what is wrong with it beside it. */
export function SendingList({ sendings, leaveOut }: { sendings: readonly Sending[]; leaveOut: (id: string) => void }) {
  const t = useTranslations('photos');
  const kept = sendings.filter(({ state }) => state === 'kept').length;
  return (
    <>
      <ul className="grid w-full max-w-prose gap-2 empty:hidden">
        {sendings.map((one) => (
          <li key={one.id} className={`flex flex-wrap items-center gap-x-4 gap-y-1 rounded-md border-2 bg-sheet p-3 ${one.state === 'refused' ? 'border-rust' : 'border-line'}`}>
            <span className="min-w-0 grow font-semibold [overflow-wrap:anywhere]">{one.file.name}</span>
            {one.state !== 'refused' && <span className="text-ink-soft">{t(one.state)}</span>}
            {(one.state === 'waiting' || one.state === 'refused') && (
              <button type="button" className={buttonClass('quiet')} onClick={() => leaveOut(one.id)} aria-label={t('leaveOutOf', { name: one.file.name })}>
                {t('leaveOut')}
              </button>
            )}
            {one.state === 'refused' && <strong className="w-full text-rust">{one.words ?? t(`faults.${one.fault ?? 'unheard'}`)}</strong>}
          </li>
        ))}
      </ul>
      {/* Always there, so that what appears in it is read out. */}
      <p role="status" className="font-semibold empty:hidden">{kept > 0 ? t('tally', { kept, n: sendings.length }) : null}</p>
    </>
  );
}

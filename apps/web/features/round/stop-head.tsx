import { useTranslations } from 'next-intl';
import { memo, type ReactNode, type Ref } from 'react';
import { sayDay } from '../../lib/calendar.ts';
import { Flag } from '../../ui/flag.tsx';
import { StageMark } from '../../ui/stage-mark.tsx';
import type { Stop } from './stop.ts';
import type { Walk } from './use-round.ts';

/** What can be done with the batch beside counting it, at the top: small keys, as large as a glove needs. */
export const STOP_KEY = 'inline-flex min-h-14 min-w-14 cursor-pointer items-center justify-center rounded-md border-2 border-line-strong bg-sheet px-2 text-sm leading-tight font-semibold no-underline';

interface StopHeadProps {
  readonly ref: Ref<HTMLHeadingElement>;
  /** Only the label, where the rest would push the keys off the screen. */
  readonly isShort: boolean;
  readonly stop: Stop;
  readonly at: number;
  readonly of: number;
  readonly leaveTo: string;
  /** Who logs here. */
  readonly me: string;
  /** Not while something is tapped in that is not kept yet. */
  readonly actHref: string | undefined;
  readonly step: Walk['step'];
  readonly photo: ReactNode;
}

/** Which batch this is and where it stands; what was counted last time is told, and never filled in. A tap on a key leaves it as it is. */
export const StopHead = memo(function StopHead({ ref, isShort, stop, at, of, leaveTo, me, actHref, step, photo }: StopHeadProps) {
  const t = useTranslations('round');
  const stages = useTranslations('words.stage');
  const { label, stage, donor, stand, species, place, isTray, rows, held, lastCount, openedOn } = stop;
  const where = [place, rows && t('row', { rows, n: rows.includes('-') ? 2 : 1 })].filter(Boolean).join(', ');
  return (
    <header className="grid gap-1">
      <div className={`flex flex-wrap items-center justify-between gap-x-2 text-sm ${isShort ? 'hidden' : ''}`}>
        <a href={leaveTo} className="inline-flex min-h-14 min-w-14 items-center underline">{t('leave')}</a>
        <span className="min-w-0 text-center leading-tight tabular-nums">{t('at', { at: at + 1, of })}<span className="block truncate font-semibold">{me}</span></span>
        <button type="button" onClick={() => step({ step: 'go', where: 'told' })} className="inline-flex min-h-14 min-w-14 cursor-pointer items-center justify-end underline">{t('toSums')}</button>
      </div>
      <svg viewBox={`0 0 ${of} 1`} preserveAspectRatio="none" aria-hidden className={`h-1.5 w-full rounded-full bg-line ${isShort ? 'hidden' : ''}`}>
        <rect width={at + 1} height="1" className="fill-juniper" />
      </svg>
      <div className={`mt-1 flex flex-wrap items-center gap-x-2 gap-y-1 ${isShort ? '' : 'min-h-14'}`}>
        <h1 ref={ref} id="stop" tabIndex={-1} className="text-xl outline-none"><span className="tie-label">{label}</span></h1>
        {isShort ? <strong>{t('deadTitle')}</strong> : <StageMark stage={stage} isWordHidden />}
        {held && <Flag tone="grave">{t('held')}</Flag>}
        {!isShort && (
          <span className="ml-auto inline-flex flex-wrap gap-2">
            {photo}
            {actHref !== undefined && <a href={actHref} className={`${STOP_KEY} w-20 text-center`}>{t('doIt')}</a>}
          </span>
        )}
      </div>
      <div className={isShort ? 'hidden' : ''}>
        <p className="leading-snug">
          {isTray ? <button type="button" onClick={() => step({ step: 'go', where: { trayAt: at } })} className="-mt-1 -mb-4 inline-flex min-h-14 cursor-pointer flex-wrap items-center gap-x-2 pb-4 text-left"><strong>{where}</strong> <span className="underline">{t('wholeTray')}</span></button> : <strong>{where}</strong>}
          <span className="stop-facts block text-sm text-ink-soft">{[stages(stage), donor, species].filter(Boolean).join(' · ')}{stand && <span className="stop-stand"> · {stand}</span>}</span>
          <span className="block text-sm text-ink-soft">
            {lastCount
              ? t('lastCount', { day: sayDay(lastCount.day), alive: lastCount.alive, rooted: lastCount.rooted ?? 0, isRooted: lastCount.rooted === null ? 'no' : 'yes', look: t(`looks.${lastCount.look}`).toLowerCase() })
              : t('neverCounted', { day: sayDay(openedOn) })}
          </span>
        </p>
      </div>
    </header>
  );
});

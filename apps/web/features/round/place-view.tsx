import { useTranslations } from 'next-intl';
import { useState } from 'react';
import type { TapAnswer } from '@sprigline/domain';
import { minuteOfDay, sayDay, today } from '../../lib/calendar.ts';
import { buttonClass } from '../../ui/button-class.ts';
import { useNewHeading } from '../../ui/use-new-heading.ts';
import { newlyBad, placeAfter, SEVERITIES } from './place-answer.ts';
import type { RoundProps } from './round-screen.tsx';
import type { Walk } from './use-round.ts';

const ANSWERS: readonly TapAnswer[] = ['yes', 'no', 'notHere'];
const KEY = 'flex min-h-14 flex-1 cursor-pointer touch-manipulation items-center justify-center rounded-md border-2 px-1 text-center leading-tight';
const lookOf = (isChosen: boolean) => (isChosen ? 'border-juniper bg-lichen font-semibold text-on-lichen shadow-[inset_0_-4px_0_var(--juniper)]' : 'border-line-strong bg-sheet');

interface PlaceViewProps extends RoundProps {
  readonly walk: Walk;
}

/** The place before its batches: five taps. What is wrong opens an incident. */
export function PlaceView({ placeName, taps, zone, stops, walk: { state: { draft }, step, tellPlace } }: PlaceViewProps) {
  const t = useTranslations('round.place');
  const round = useTranslations('round');
  const [isAll, showAll] = useState(false);
  const top = useNewHeading();
  const minute = draft.day === today(zone) ? minuteOfDay(zone) : undefined;
  const shown = taps.filter(({ isAsked, tap }) => isAll || isAsked || draft.place?.found[tap] !== undefined);
  const bad = newlyBad(draft.place?.found ?? {}, taps);

  return (
    <section aria-labelledby="place" className="mx-auto flex max-w-md flex-col gap-4">
      <h1 ref={top} id="place" tabIndex={-1} className="text-xl outline-none">{t('title', { place: placeName })}</h1>
      {shown.map(({ tap, last, open }) => (
        <fieldset key={tap}>
          <legend className="font-semibold">{t(`taps.${tap}`)}</legend>
          {open ? <p className="text-sm text-rust">{t('open', { day: sayDay(open.since) })}</p> : last && <p className="text-sm text-ink-soft">{t('last', { day: sayDay(last.day), answer: t(`answers.${last.answer}`) })}</p>}
          <div className="mt-1 flex gap-2">
            {ANSWERS.map((answer) => {
              const isChosen = draft.place?.found[tap] === answer;
              return <button key={answer} type="button" aria-pressed={isChosen} onClick={() => step({ step: 'place', place: placeAfter(draft.place, tap, answer, minute) })} className={`${KEY} ${lookOf(isChosen)}`}>{t(`answers.${answer}`)}</button>;
            })}
          </div>
          {bad.includes(tap) && draft.place && (
            <div role="group" aria-label={t('severity')} className="mt-2 flex gap-2">
              {SEVERITIES.map((one) => {
                const isChosen = (draft.place?.severity[tap] ?? 'serious') === one;
                return <button key={one} type="button" aria-pressed={isChosen} onClick={() => draft.place && step({ step: 'place', place: { ...draft.place, severity: { ...draft.place.severity, [tap]: one } } })} className={`${KEY} ${lookOf(isChosen)}`}>{t(`severities.${one}`)}</button>;
              })}
            </div>
          )}
        </fieldset>
      ))}
      {bad.length > 0 && <p role="status" className="rounded-md border-2 border-on-straw bg-straw p-3 text-on-straw">{t('opens', { n: bad.length })} {t('caution')}</p>}
      {!isAll && shown.length < taps.length && <button type="button" onClick={() => showAll(true)} className={buttonClass('quiet')}>{t('more')}</button>}
      <div className="sticky bottom-0 -mx-4 flex gap-2 border-t border-line bg-paper px-4 py-2">
        <button type="button" onClick={() => step({ step: 'go', where: 'start' })} className={`${buttonClass('quiet')} min-h-16`}>{round('back')}</button>
        <button type="button" onClick={() => tellPlace(Math.max(0, stops.findIndex(({ batchId }) => !draft.answers[batchId])))} className={`${buttonClass('main')} min-h-16 flex-1 text-lg`}>
          {draft.place ? round('next') : round('skip')}
        </button>
      </div>
    </section>
  );
}

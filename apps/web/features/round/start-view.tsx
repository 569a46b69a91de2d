import { useTranslations } from 'next-intl';
import { useState } from 'react';
import { dayAfter, sayDay } from '../../lib/calendar.ts';
import { WORKDAY_COOKIE, WORKDAY_KEPT_S } from '../../lib/workday-cookie.ts';
import { buttonClass } from '../../ui/button-class.ts';
import { Choose } from '../../ui/form/choose.tsx';
import { INPUT } from '../../ui/form/input-class.ts';
import { MARK, PLATE } from '../../ui/form/plate.ts';
import { PageHeading } from '../../ui/page-heading.tsx';
import type { RoundProps } from './round-screen.tsx';
import type { RoundState, RoundStep } from './round-state.ts';
import { WalkList } from './walk-list.tsx';

interface StartViewProps extends RoundProps {
  readonly state: RoundState;
  readonly step: (next: RoundStep) => void;
}

/** Before the walk: which day it is for, who looks, and what lies ahead. */
export function StartView(props: StartViewProps) {
  const { homeHref, placeName, today, me, people, workdays, stops, taps, noEntryBefore, state: { draft, isRestored }, step } = props;
  const t = useTranslations('round');
  const ui = useTranslations('ui');
  const [chosenDay, setDay] = useState<string>();
  const [chosenEyes, setEyes] = useState<string>();
  const [chosenWorkday, setWorkday] = useState<string>();
  const [day, seenBy] = [chosenDay ?? draft.day, chosenEyes ?? draft.seenBy];
  const known = draft.workdayId ?? workdays.remembered ?? '';
  const workdayId = chosenWorkday ?? (workdays.choices.some(({ value }) => value === known) ? known : '');
  const answered = Object.keys(draft.answers).length;
  const others = people.map(({ id, name }) => ({ value: id, words: name }));

  function start() {
    if (chosenWorkday !== undefined) document.cookie = `${WORKDAY_COOKIE}=${chosenWorkday}; path=/; max-age=${chosenWorkday === '' ? 0 : WORKDAY_KEPT_S}; samesite=lax`;
    step({ step: 'begin', day, seenBy, workdayId: workdayId || undefined });
  }

  function begin() {
    start();
    const next = stops.findIndex(({ batchId }) => !draft.answers[batchId]);
    if (answered === 0 && taps.length > 0) step({ step: 'go', where: 'place' });
    if (answered > 0) step({ step: 'go', where: next === -1 ? 'told' : next });
  }

  return (
    <>
      <p><a href={homeHref} className="inline-flex min-h-14 items-center underline">{t('toField')}</a></p>
      <PageHeading kind={t('kind')} lead={t('lead', { n: stops.length })}>{t('title', { place: placeName })}</PageHeading>
      {isRestored && answered > 0 && (
        <div role="status" className="mb-6 grid max-w-prose gap-2 rounded-md border-2 border-juniper bg-lichen p-4 text-on-lichen">
          <p>{t('kept', { n: answered, day: sayDay(draft.day) })}</p>
          <button type="button" onClick={() => step({ step: 'anew', day: today })} className={buttonClass('quiet')}>{t('anew')}</button>
        </div>
      )}
      {noEntryBefore && <p role="alert" className="mb-6 max-w-prose rounded-md border-2 border-rust bg-rust-wash p-4 font-semibold text-rust">{t('noEntry', { place: noEntryBefore.placeName, day: sayDay(noEntryBefore.day), time: clock(noEntryBefore.minute) })}</p>}
      <div className="grid gap-6">
        <fieldset>
          <legend className="font-semibold">{t('day')}</legend>
          <div className="mt-2 grid gap-2 sm:flex">
            {[{ at: today, words: ui('today') }, { at: dayAfter(today, -1), words: ui('yesterday') }].map(({ at, words }) => (
              <label key={at} className={PLATE}>
                <input type="radio" name="day" checked={day === at} onChange={() => setDay(at)} className={MARK} />
                {words} <span className="font-normal text-ink-soft">{sayDay(at)}</span>
              </label>
            ))}
            <input type="date" aria-label={ui('anotherDay')} max={today} value={day} onChange={(event) => event.target.value && setDay(event.target.value)} className={`${INPUT} sm:max-w-52`} />
          </div>
        </fieldset>
        <Choose label={t('seenBy')} value={seenBy} choose={setEyes} none={t('me', { name: me })} choices={others} />
        <Choose label={t('workday')} value={workdayId} choose={setWorkday} none={t('noWorkday')} choices={workdays.choices} />
        <button type="button" onClick={begin} className={`${buttonClass('main')} min-h-16 w-full max-w-prose text-lg`}>
          {answered > 0 ? t('goOn', { n: answered }) : t('begin')}
        </button>
      </div>
      <WalkList {...props} go={(where) => { start(); step({ step: 'go', where }); }} />
    </>
  );
}

const clock = (minute: number): string => `${String(Math.floor(minute / 60)).padStart(2, '0')}:${String(minute % 60).padStart(2, '0')}`;

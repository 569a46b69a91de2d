import { useTranslations } from 'next-intl';
import { type ReactNode, useCallback, useEffect, useReducer, useState } from 'react';
import { minuteOfDay, today } from '../../lib/calendar.ts';
import { deadIn, fieldsFor, isBlank, slipIn } from './answer.ts';
import { countingAfter, countingOf } from './counting.ts';
import { DeadBar, DeadPanel } from './dead-panel.tsx';
import { RoundKeys } from './round-keys.tsx';
import { keepTyping, readTyping, type Typing } from './typing.ts';
import { useTypedFigures } from '../../ui/form/use-typed-figures.ts';
import { useNewHeading } from '../../ui/use-new-heading.ts';
import { LookChoice } from './look-choice.tsx';
import { NumberFields } from './number-fields.tsx';
import type { Look, Stop } from './stop.ts';
import { StopBar } from './stop-bar.tsx';
import { StopHead } from './stop-head.tsx';
import { Told } from './told.tsx';
import type { Walk } from './use-round.ts';

interface StopViewProps {
  readonly stop: Stop;
  readonly at: number;
  readonly of: number;
  readonly zone: string;
  readonly leaveTo: string;
  readonly me: string;
  /** Under which the phone keeps what is tapped in before it is told. */
  readonly typingKey: string;
  readonly actHref: string;
  readonly walk: Walk;
  readonly photo: ReactNode;
}

/** One batch, one screen. A field is marked, and the keys write into it. */
export function StopView({ stop, at, of, zone, leaveTo, me, actHref, typingKey, photo, walk: { state: { draft }, step, tell, undo } }: StopViewProps) {
  const before = draft.answers[stop.batchId];
  const t = useTranslations('round');
  const [typed] = useState(() => readTyping(window.localStorage, typingKey, Date.now()) ?? before);
  const [counting, count] = useReducer(countingAfter, typed ?? { look: draft.look, numbers: {}, dead: {} }, countingOf);
  const { look, numbers, dead, active, slip } = counting;
  const nothingYet = isBlank(numbers, dead);
  const top = useNewHeading();
  useKeptTyping(typingKey, before, counting);

  const press = useCallback((key: string) => count({ step: 'press', key }), []);
  const choose = useCallback((next: Look) => {
    count({ step: 'look', look: next, stage: stop.stage });
    step({ step: 'look', look: next });
  }, [step, stop.stage]);
  const go = (where: Parameters<typeof tell>[2]): void => step({ step: 'go', where });

  const onward = at + 1 < of ? at + 1 : 'told';
  function tellNow(told: Pick<Parameters<typeof tell>[1], 'said' | 'numbers' | 'dead'>): void {
    keepTyping(window.localStorage, typingKey, undefined, Date.now());
    const minute = draft.day === today(zone) ? (before?.minute ?? minuteOfDay(zone)) : undefined;
    tell(stop, { ...told, look, minute }, onward);
  }

  function next() {
    if (nothingYet) {
      // Rubbed out again: what was told before is taken back. Nothing to report has no number to rub out: it is passed by.
      if (before?.said === 'seen') undo(before);
      return go(onward);
    }
    const wrong = slipIn({ numbers });
    if (wrong) return count({ step: 'slip', slip: wrong });
    tellNow({ said: 'seen', numbers, dead });
  }

  useTypedFigures(press);
  return (
    <section aria-labelledby="stop" className="mx-auto flex max-w-md flex-col gap-2">
      <StopHead ref={top} isShort={'cause' in active} stop={stop} at={at} of={of} leaveTo={leaveTo} me={me} actHref={nothingYet ? actHref : undefined} step={step} photo={photo} />
      {'cause' in active ? (
        <DeadPanel dead={dead} cause={active.cause} choose={(cause) => count({ step: 'activate', active: { cause } })} />
      ) : (
        <>
          {stop.stage !== 'planted' && <LookChoice look={look} choose={choose} />}
          <NumberFields fields={fieldsFor(stop.stage, look)} numbers={numbers} dead={deadIn(dead)} active={active.field} activate={(field) => count({ step: 'activate', active: { field } })} openDead={() => count({ step: 'activate', active: { cause: 'brown' } })} />
        </>
      )}
      {nothingYet && before?.said === 'fine' && <Told answer={before} isShort />}
      {slip && <p role="alert" className="font-semibold text-rust">{t(`slips.${slip}`)}</p>}
      <RoundKeys active={active} press={press} />
      {'cause' in active ? (
        <DeadBar dead={dead} done={() => count({ step: 'activate', active: { field: 'alive' } })} />
      ) : (
        <StopBar isBlank={nothingYet} back={() => go(at === 0 ? 'start' : at - 1)} fine={() => tellNow({ said: 'fine', numbers: {}, dead: {} })} next={next} />
      )}
    </section>
  );
}

/** Keeps on the phone what is tapped in and not told yet. */
function useKeptTyping(key: string, before: Typing | undefined, { look, numbers, dead }: Typing): void {
  useEffect(() => {
    const isTold = (numbers === before?.numbers && dead === before.dead) || isBlank(numbers, dead);
    keepTyping(window.localStorage, key, isTold ? undefined : { look, numbers, dead }, Date.now());
  }, [key, before, look, numbers, dead]);
}

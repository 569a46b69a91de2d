import { useTranslations } from 'next-intl';
import { type ReactNode, useEffect, useRef, useState } from 'react';
import { minuteOfDay, today } from '../../lib/calendar.ts';
import { type Dead, deadIn, type Field, fieldsFor, isBlank, type Numbers, slipIn } from './answer.ts';
import { DeadBar, DeadPanel } from './dead-panel.tsx';
import { numberAfter } from '../../ui/form/keypad.tsx';
import { type Active, RoundKeys } from './round-keys.tsx';
import { keepTyping, readTyping, type Typing } from './typing.ts';
import { useTypedFigures } from '../../ui/form/use-typed-figures.ts';
import { LookChoice } from './look-choice.tsx';
import { NumberFields } from './number-fields.tsx';
import type { Look, Stop } from './stop.ts';
import { StopBar } from './stop-bar.tsx';
import { StopHead } from './stop-head.tsx';
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
  const [look, setLook] = useState<Look>(typed?.look ?? draft.look);
  const [numbers, setNumbers] = useState<Numbers>(typed?.numbers ?? {});
  const [dead, setDead] = useState<Dead>(typed?.dead ?? {});
  const [active, activate] = useState<Active>({ field: 'alive' });
  const [slip, setSlip] = useState<ReturnType<typeof slipIn>>();
  const top = useRef<HTMLHeadingElement>(null);
  useEffect(() => top.current?.focus(), []);
  useKeptTyping(typingKey, before, { look, numbers, dead });

  const minute = draft.day === today(zone) ? (before?.minute ?? minuteOfDay(zone)) : undefined;
  const onward = at + 1 < of ? at + 1 : 'told';
  const tellNow = (told: Parameters<typeof tell>[1]): void => (keepTyping(window.localStorage, typingKey, undefined, Date.now()), tell(stop, told, onward));
  function press(key: string) {
    setSlip(undefined);
    if ('cause' in active) setDead({ ...dead, [active.cause]: numberAfter(dead[active.cause], key) ?? 0 });
    else setNumbers(withNumber(numbers, active.field, numberAfter(numbers[active.field], key)));
  }

  function choose(next: Look) {
    setLook(next);
    step({ step: 'look', look: next });
    // What cannot be seen with that look is not kept.
    const seen = fieldsFor(stop.stage, next);
    setNumbers(Object.fromEntries(Object.entries(numbers).filter(([field]) => seen.some((one) => one === field))));
    if ('field' in active && !seen.includes(active.field)) activate({ field: 'alive' });
  }

  function next() {
    if (isBlank(numbers, dead)) {
      // Rubbed out again: what was told before is taken back. Nothing to report has no number to rub out: it is passed by.
      if (before?.said === 'seen') undo(before);
      return step({ step: 'go', where: onward });
    }
    const wrong = slipIn({ numbers });
    if (wrong) return setSlip(wrong);
    tellNow({ said: 'seen', look, numbers, dead, minute });
  }

  useTypedFigures(press);
  return (
    <section aria-labelledby="stop" className="mx-auto flex max-w-md flex-col gap-2">
      <StopHead ref={top} isShort={'cause' in active} stop={stop} at={at} of={of} leaveTo={leaveTo} me={me} actHref={isBlank(numbers, dead) ? actHref : undefined} finish={() => step({ step: 'go', where: 'told' })} openTray={() => step({ step: 'go', where: { trayAt: at } })} photo={photo} />
      {'cause' in active ? (
        <DeadPanel dead={dead} cause={active.cause} choose={(cause) => activate({ cause })} />
      ) : (
        <>
          {stop.stage !== 'planted' && <LookChoice look={look} choose={choose} />}
          <NumberFields fields={fieldsFor(stop.stage, look)} numbers={numbers} dead={deadIn(dead)} active={active.field} activate={(field) => activate({ field })} openDead={() => activate({ cause: 'brown' })} />
        </>
      )}
      {slip && <p role="alert" className="font-semibold text-rust">{t(`slips.${slip}`)}</p>}
      <RoundKeys active={active} press={press} />
      {'cause' in active ? (
        <DeadBar dead={dead} done={() => activate({ field: 'alive' })} />
      ) : (
        <StopBar
          isBlank={isBlank(numbers, dead)}
          back={() => step({ step: 'go', where: at === 0 ? 'start' : at - 1 })}
          fine={() => tellNow({ said: 'fine', look, numbers: {}, dead: {}, minute })}
          next={next}
        />
      )}
    </section>
  );
}

function withNumber(numbers: Numbers, field: Field, n: number | undefined): Numbers {
  const { [field]: _, ...others } = numbers;
  return n === undefined ? others : { ...others, [field]: n };
}

/** Keeps on the phone what is tapped in and not told yet. */
function useKeptTyping(key: string, before: Typing | undefined, { look, numbers, dead }: Typing): void {
  useEffect(() => {
    const isTold = (numbers === before?.numbers && dead === before.dead) || isBlank(numbers, dead);
    keepTyping(window.localStorage, key, isTold ? undefined : { look, numbers, dead }, Date.now());
  }, [key, before, look, numbers, dead]);
}

'use client';

import { useTranslations } from 'next-intl';
import { type ReactNode, useState } from 'react';
import { dayAfter, sayDay } from '../../lib/calendar.ts';

import { ChoiceGroup } from './choice-group.tsx';
import { MARK, PLATE } from './plate.ts';
import { describedBy, useField } from './form-context.ts';
import { INPUT } from './input-class.ts';

interface DayFieldProps {
  readonly name: string;
  /** Today in the programme's zone, such as 2026-11-25. */
  readonly today: string;
  readonly hint?: ReactNode;
  readonly value?: string | undefined;
  /** Other days may be later than today: for an end, never for something seen. */
  readonly isOpen?: boolean;
}

/** Today, yesterday, or another day. Read it with `day` of lib/form-values.ts. */
export function DayField({ name, today, hint, value = today, isOpen = false }: DayFieldProps) {
  const field = useField(name);
  const other = useField(`${name}/another`);
  const t = useTranslations('ui');
  const yesterday = dayAfter(today, -1);
  const near = [
    { day: today, words: t('today') },
    { day: yesterday, words: t('yesterday') },
  ];
  const wanted = field.typed ?? value;
  const [chosen, choose] = useState(wanted === today || wanted === yesterday ? wanted : 'another');

  return (
    <ChoiceGroup name={name} hint={hint} hintId={field.hintId} errorId={field.errorId} describedBy={describedBy(field, hint)}>
      {near.map(({ day, words }, at) => (
        <label key={day} className={PLATE}>
          <input id={at === 0 ? name : undefined} type="radio" name={name} value={day} checked={chosen === day} onChange={() => choose(day)} className={MARK} />
          <span>
            {words} <span className="block text-sm font-normal text-ink-soft">{sayDay(day)}</span>
          </span>
        </label>
      ))}
      <label className={PLATE}>
        <input type="radio" name={name} value="another" checked={chosen === 'another'} onChange={() => choose('another')} className={MARK} />
        {t('anotherDay')}
      </label>
      <input
        type="date"
        name={`${name}/another`}
        aria-label={t('whichDay')}
        defaultValue={other.typed ?? (value === today || value === yesterday ? '' : value)}
        {...(isOpen ? {} : { max: today })}
        onInput={() => choose('another')}
        className={`${INPUT} max-w-52`}
      />
    </ChoiceGroup>
  );
}

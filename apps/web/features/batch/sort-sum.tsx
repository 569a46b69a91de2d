'use client';

import { sortingSum } from '@sprigline/domain';
import { useTranslations } from 'next-intl';
import { type ReactNode, useContext, useRef, useState } from 'react';
import { SAYING } from '../../lib/entry-said.ts';
import { FormContext } from '../../ui/form/form-context.ts';
import { TextField } from '../../ui/form/text-field.tsx';
import { TickField } from '../../ui/form/tick-field.tsx';
import { sortingOf } from './sort-said.ts';

/** Stands around the heaps and adds them up while they are typed, in sight all the while: what is missing is asked for before the label goes. */
export function SortSum({ inBooks, foundHint, missingHint, children }: { inBooks: number; foundHint: string; missingHint: string; children: ReactNode }) {
  const t = useTranslations('sorting');
  const { errors } = useContext(FormContext);
  const heaps = useRef<HTMLDivElement>(null);
  const [{ told, unaccounted, over }, setSum] = useState({ told: 0, unaccounted: 0, over: 0 });

  function addUp() {
    const form = heaps.current?.closest('form');
    if (form) setSum(sortingSum(sortingOf(new FormData(form))));
  }
  // The keys of a number pad change the number after the press.
  const addUpSoon = () => requestAnimationFrame(addUp);
  const isRefused = (name: string) => errors[`${SAYING}${name}`] !== undefined;

  return (
    <div ref={heaps} onInput={addUpSoon} onClick={addUpSoon} className="flex w-full flex-col gap-6 [&_:is(input,select,button)]:scroll-mb-64">
      {children}
      <p role="status" className={`${told > 0 ? 'sticky bottom-20 z-[5] lg:bottom-3' : ''} w-full max-w-prose rounded-md border-2 p-3 font-semibold ${told > 0 && unaccounted + over > 0 ? 'border-on-straw bg-straw text-on-straw' : 'border-line-strong bg-sheet'}`}>
        <span className="tabular-nums">{t('sum', { inBooks, told })}</span>
        {told > 0 && <span className="block">{over > 0 ? t('over', { n: over }) : unaccounted > 0 ? t('unaccounted', { n: unaccounted }) : t('closes')}</span>}
      </p>
      {(over > 0 || isRefused('foundReason')) && <TextField name={`${SAYING}foundReason`} hint={foundHint} />}
      {((told > 0 && unaccounted > 0) || isRefused('missing')) && <TickField name={`${SAYING}missing`} hint={missingHint} />}
    </div>
  );
}

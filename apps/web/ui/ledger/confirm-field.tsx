'use client';

import type { EntryProblem } from '@sprigline/contract';
import { useTranslations } from 'next-intl';
import { useContext } from 'react';
import { MARK, PLATE } from '../form/plate.ts';
import { FormContext } from '../form/form-context.ts';
import { Doubts } from './doubts.tsx';

/** Refusals that are questions: the same entry is taken once somebody says so. */
const MAY_CONFIRM = ['/problems/entry/looks-wrong', '/problems/entry/breaks-later-ones'];

/** After a refusal: what does not add up, with the numbers, and where it may be so all the same, a tick for it. */
export function ConfirmField() {
  const t = useTranslations('entries.doubts');
  // It is the problem of an entry, parsed as such where it was asked for.
  const problem = useContext(FormContext).problem as EntryProblem | undefined;
  if (!problem?.discrepancies) return null;
  return (
    <div className="w-full max-w-prose rounded-md border-2 border-on-straw bg-straw p-4 text-on-straw">
      <h3 className="text-lg">{t('title')}</h3>
      <Doubts doubts={problem.discrepancies} />
      {MAY_CONFIRM.includes(problem.type) && (
        <label className={`${PLATE} mt-3 text-ink`}>
          <input type="checkbox" name="confirm" className={MARK} />
          <span>
            {t('confirm')} <span className="block text-sm font-normal">{t('confirmHint')}</span>
          </span>
        </label>
      )}
    </div>
  );
}

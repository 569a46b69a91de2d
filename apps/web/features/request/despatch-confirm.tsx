'use client';

import { useContext } from 'react';
import { MARK, PLATE } from '../../ui/form/plate.ts';
import { FormContext } from '../../ui/form/form-context.ts';

const MAY_CONFIRM = ['/problems/entry/looks-wrong', '/problems/entry/breaks-later-ones'];

/** Where the books only ask, a tick to write it all the same. */
export function DespatchConfirm({ words }: { words: string }) {
  const { problem } = useContext(FormContext);
  if (!problem || !MAY_CONFIRM.includes(problem.type)) return null;
  return (
    <label className={PLATE}>
      <input type="checkbox" name="confirm" className={MARK} />
      {words}
    </label>
  );
}

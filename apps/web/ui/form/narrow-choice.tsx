import { useTranslations } from 'next-intl';
import { useState } from 'react';
import { MARK, PLATE } from './plate.ts';
import { INPUT } from './input-class.ts';
import type { Narrowed } from './narrowed.ts';

interface NarrowChoiceProps {
  readonly legend: string;
  /** What to show for what was typed. */
  readonly find: (typed: string) => Narrowed;
  readonly chosen: string | undefined;
  readonly choose: (id: string) => void;
}

/** One of many: the likeliest are a tap away, a long list is narrowed by typing. */
export function NarrowChoice({ legend, find, chosen, choose }: NarrowChoiceProps) {
  const t = useTranslations('ui');
  const [typed, setTyped] = useState('');
  const { shown, more } = find(typed);
  return (
    <fieldset className="min-w-0">
      <legend className="font-semibold">{legend}</legend>
      {(more > 0 || typed !== '') && (
        <input type="search" aria-label={t('narrow')} placeholder={t('narrow')} value={typed} onChange={(event) => setTyped(event.target.value)} autoComplete="off" className={`${INPUT} mt-1`} />
      )}
      <div className="mt-2 grid gap-2">
        {shown.map(({ id, name, within }) => (
          <label key={id} className={PLATE}>
            <input type="radio" name={legend} checked={id === chosen} onChange={() => choose(id)} className={MARK} />
            <span className="min-w-0 leading-tight">{name} <span className="block text-sm font-normal text-ink-soft">{within}</span></span>
          </label>
        ))}
      </div>
      <p role="status" className="text-sm text-ink-soft empty:hidden">{shown.length === 0 ? t('noneFits') : more > 0 ? t('moreFit', { n: more }) : ''}</p>
    </fieldset>
  );
}

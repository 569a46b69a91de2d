import { useTranslations } from 'next-intl';
import { MARK, PLATE } from '../../ui/form/plate.ts';
import type { Joinable } from './joinable.ts';

interface JoinChoiceProps {
  readonly joinable: readonly Joinable[];
  /** Of the batch that is joined; nothing: the plants become one of their own. */
  readonly chosen: string | undefined;
  readonly choose: (batchId: string | undefined) => void;
}

/** A batch of their own, or one of the same sticking that stands there already. Not asked where there is none. */
export function JoinChoice({ joinable, chosen, choose }: JoinChoiceProps) {
  const t = useTranslations('act.join');
  if (joinable.length === 0) return null;
  return (
    <fieldset className="min-w-0">
      <legend className="font-semibold">{t('which')}</legend>
      <div className="mt-2 grid gap-2">
        <label className={PLATE}>
          <input type="radio" name="join" checked={chosen === undefined} onChange={() => choose(undefined)} className={MARK} />
          {t('own')}
        </label>
        {joinable.map(({ batch: { id, label }, balance }) => (
          <label key={id} className={PLATE}>
            <input type="radio" name="join" checked={chosen === id} onChange={() => choose(id)} className={MARK} />
            <span className="min-w-0 leading-tight"><span className="tie-label">{label}</span> <span className="block text-sm font-normal text-ink-soft">{t('there', { n: balance })}</span></span>
          </label>
        ))}
      </div>
    </fieldset>
  );
}

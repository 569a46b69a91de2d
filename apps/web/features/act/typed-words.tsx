import { useTranslations } from 'next-intl';
import { useId } from 'react';
import { INPUT } from '../../ui/form/input-class.ts';

interface TypedWordsProps {
  readonly label: string;
  readonly isOptional?: boolean;
  readonly value: string | undefined;
  readonly change: (value: string) => void;
  /** Typed last on this phone: a tap and no typing. */
  readonly last?: readonly string[];
  readonly isLong?: boolean;
}

/** Words that are typed, or taken from what was typed last. */
export function TypedWords({ label, isOptional = false, value = '', change, last = [], isLong = false }: TypedWordsProps) {
  const ui = useTranslations('ui');
  const id = useId();
  return (
    <div>
      <label htmlFor={id} className="font-semibold">{label} {isOptional && <span className="font-normal text-ink-soft">{ui('optional')}</span>}</label>
      {isLong
        ? <textarea id={id} value={value} onChange={(event) => change(event.target.value)} rows={4} maxLength={4_000} className={`${INPUT} mt-1`} />
        : <input id={id} value={value} onChange={(event) => change(event.target.value)} maxLength={120} autoComplete="off" className={`${INPUT} mt-1`} />}
      {last.length > 0 && (
        <div className="mt-2 flex flex-wrap gap-2">
          {last.map((words) => (
            <button key={words} type="button" aria-pressed={words === value} onClick={() => change(words === value ? '' : words)} className="inline-flex min-h-14 max-w-full cursor-pointer items-center rounded-md border-2 border-line-strong bg-sheet px-3 py-1 text-left wrap-anywhere aria-pressed:border-juniper aria-pressed:bg-lichen aria-pressed:font-semibold aria-pressed:text-on-lichen">{words}</button>
          ))}
        </div>
      )}
    </div>
  );
}

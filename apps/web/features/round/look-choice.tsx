import { useTranslations } from 'next-intl';
import { memo } from 'react';
import type { Look } from './stop.ts';

const LOOKS: readonly Look[] = ['look', 'tug', 'lifted'];

/** How the batch is seen. The last one stays chosen: a whole bench is mostly looked at in one way. */
export const LookChoice = memo(function LookChoice({ look, choose }: { look: Look; choose: (look: Look) => void }) {
  const t = useTranslations('round');
  return (
    <fieldset>
      <legend className="sr-only">{t('how')}</legend>
      <div className="flex flex-wrap gap-2">
        {LOOKS.map((one) => (
          <label
            key={one}
            className="flex min-h-14 flex-1 cursor-pointer touch-manipulation items-center justify-center rounded-md border-2 border-line-strong bg-sheet px-1 text-center leading-tight has-checked:border-juniper has-checked:bg-lichen has-checked:font-semibold has-checked:text-on-lichen has-checked:shadow-[inset_0_-4px_0_var(--juniper)] has-focus-visible:outline-3 has-focus-visible:outline-offset-2 has-focus-visible:outline-[var(--focus)]"
          >
            <input type="radio" name="look" checked={one === look} onChange={() => choose(one)} className="sr-only" />
            {t(`looks.${one}`)}
          </label>
        ))}
      </div>
    </fieldset>
  );
});

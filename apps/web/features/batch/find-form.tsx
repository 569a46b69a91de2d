import { useMessages, useTranslations } from 'next-intl';
import { buttonClass } from '../../ui/button-class.ts';
import { INPUT } from '../../ui/form/input-class.ts';

/** From the label in the hand to its batch. */
export function FindForm({ label }: { label: string | undefined }) {
  const said = useMessages().batches;
  const t = useTranslations('batches');
  return (
    <form method="get" role="search" className="not-on-paper mb-6">
      <label htmlFor="label" className="font-semibold">{said.find}</label>
      {label && <p id="not-found" role="alert" className="font-semibold text-rust">{t('notFound', { label })}</p>}
      <div className="mt-1 flex max-w-sm gap-2">
        <input id="label" name="label" defaultValue={label} autoComplete="off" autoCapitalize="characters" spellCheck={false} enterKeyHint="search" aria-invalid={label !== undefined} aria-describedby={label ? 'not-found' : undefined} className={INPUT} />
        <button className={buttonClass()}>{said.findGo}</button>
      </div>
    </form>
  );
}

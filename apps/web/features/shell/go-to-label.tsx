import { useTranslations } from 'next-intl';
import { pageOf } from '../../lib/page-address.ts';

/** From the label in the hand to what it is on, from whatever page one is on. */
export function GoToLabel({ programme }: { programme: string }) {
  const t = useTranslations('shell');
  return (
    <form action={pageOf(programme, 'scan')} role="search" aria-label={t('goToLabel')} className="mt-4 mr-5 text-sm">
      <label htmlFor="go-to-label">{t('goToLabel')}</label>
      <div className="mt-1 flex gap-2">
        <input
          id="go-to-label" name="code" required autoComplete="off" autoCapitalize="characters" spellCheck={false} enterKeyHint="search"
          className="min-h-11 w-full min-w-0 rounded-md border-2 border-current bg-transparent px-3"
        />
        <button className="min-h-11 shrink-0 rounded-md border-2 border-current px-3 font-semibold">{t('go')}</button>
      </div>
    </form>
  );
}

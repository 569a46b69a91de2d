import { useTranslations } from 'next-intl';
import type { BooksOf } from '../../lib/phone/use-books-here.ts';
import { buttonClass } from '../../ui/button-class.ts';
import { KeptBanner } from '../../ui/kept-banner.tsx';
import { Told } from './told.tsx';
import type { Walk } from './use-round.ts';

/** The last thing told on a round, kept on the phone. @param scanHref back to the scanner, where one came from it */
export function RoundBanner({ walk: { keeping, state: { draft }, undo }, booksOf, scanHref }: { walk: Walk; booksOf: BooksOf; scanHref: string | undefined }) {
  const t = useTranslations('round');
  const { answer, state } = keeping ?? {};
  const ahead = answer && state === 'kept' ? booksOf(answer.batchId, draft.kept[answer.batchId]?.ids ?? []).ahead : undefined;
  const kept = answer ? t('keptHere', { label: answer.label }) : t('placeKept');
  return (
    <KeptBanner
      state={state}
      title={state === 'undone' ? t('undone', { label: answer?.label ?? '' }) : kept}
      detail={answer && <Told answer={answer} isShort />}
      books={ahead && { before: ahead.before.balance, after: ahead.after.balance }}
      undo={answer && draft.answers[answer.batchId] ? () => undo(answer) : undefined}
      next={scanHref !== undefined && <a href={scanHref} className={`${buttonClass('quiet')} w-full`}>{t('scanNext')}</a>}
    />
  );
}

import { useTranslations } from 'next-intl';
import type { BooksOf } from '../../lib/phone/use-books-here.ts';
import { buttonClass } from '../../ui/button-class.ts';
import { KeptBanner } from '../../ui/kept-banner.tsx';
import type { Stop } from './stop.ts';
import { Told } from './told.tsx';
import type { Walk } from './use-round.ts';

interface RoundBannerProps {
  readonly walk: Walk;
  readonly booksOf: BooksOf;
  /** Back to the scanner, where one came from it. */
  readonly scanHref: string | undefined;
  readonly stops: readonly Stop[];
}

/** The last thing told on a round, kept on the phone. */
export function RoundBanner({ walk: { keeping, state: { draft }, step, undo }, booksOf, scanHref, stops }: RoundBannerProps) {
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
      // Back to the batch, too: what is tapped in next is meant for it, and would else be told of the one after it.
      undo={answer && draft.answers[answer.batchId] ? () => (undo(answer), step({ step: 'go', where: stops.findIndex(({ batchId }) => batchId === answer.batchId) })) : undefined}
      next={scanHref !== undefined && <a href={scanHref} className={`${buttonClass('quiet')} w-full`}>{t('scanNext')}</a>}
    />
  );
}

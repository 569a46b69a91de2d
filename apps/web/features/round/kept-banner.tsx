import { useTranslations } from 'next-intl';
import { buttonClass } from '../../ui/button-class.ts';
import { Told } from './told.tsx';
import type { BooksOf } from './use-books-here.ts';
import type { Walk } from './use-round.ts';

/** Says in words, colour and place that the last thing told is on the phone, what the books will make of it, and how to take it back. */
export function KeptBanner({ walk: { keeping, state: { draft }, undo }, booksOf }: { walk: Walk; booksOf: BooksOf }) {
  const t = useTranslations('round');
  const { answer, state } = keeping ?? {};
  const ahead = answer && state === 'kept' ? booksOf(answer.batchId, draft.kept[answer.batchId]?.ids ?? []).ahead : undefined;
  return (
    // Always there, so that what appears in it is read out.
    <div role={state === 'failed' ? 'alert' : 'status'} className="mx-auto max-w-md empty:hidden">
      {state === 'failed' && <p className="mb-2 rounded-md border-2 border-rust bg-rust-wash p-3 font-semibold text-rust">{t('notKept')}</p>}
      {state === 'undone' && <p className="mb-2 rounded-md border-2 border-line-strong bg-sheet px-3 py-2">{t('undone', { label: answer?.label ?? '' })}</p>}
      {state === 'kept' && (
        <div className="kept-banner mb-2 flex items-center justify-between gap-2 rounded-md border-2 border-juniper bg-juniper px-3 py-1 text-on-juniper">
          <div className="min-w-0 leading-tight">
            <strong>✓ {answer ? t('keptHere', { label: answer.label }) : t('placeKept')}</strong>
            {answer && <Told answer={answer} isShort />}
            {ahead && ahead.before.balance !== ahead.after.balance && <span className="block text-sm tabular-nums">{t('books', { before: ahead.before.balance, after: ahead.after.balance })}</span>}
          </div>
          {answer && draft.answers[answer.batchId] && <button type="button" onClick={() => undo(answer)} className={`${buttonClass('quiet')} shrink-0`}>{t('undo')}</button>}
        </div>
      )}
    </div>
  );
}

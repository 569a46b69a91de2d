import { useTranslations } from 'next-intl';
import { buttonClass } from '../../ui/button-class.ts';
import { KeptBanner } from '../../ui/kept-banner.tsx';
import { useNewHeading } from '../../ui/use-new-heading.ts';
import { Told } from './told.tsx';
import type { Grid, GridProps } from './use-grid.ts';

/** What was told of a tray, batch by batch, and what the books make of it; the way back is beside it. */
export function GridTold({ tray, grid: { told, undo, goOn }, again, booksOf, walk: { state: { draft } } }: GridProps & { tray: string; grid: Grid; again: () => void }) {
  const t = useTranslations('round');
  const top = useNewHeading();
  return (
    <section aria-labelledby="tray-told" className="mx-auto max-w-md">
      <KeptBanner state={told?.state} title={t('keptHere', { label: tray })} undo={undo} />
      <h1 ref={top} id="tray-told" tabIndex={-1} className="text-xl outline-none">{t('grid.told', { tray })}</h1>
      <ul className="mt-3 grid gap-2">
        {told?.answers.map((answer) => {
          const ahead = booksOf(answer.batchId, draft.kept[answer.batchId]?.ids ?? []).ahead;
          return (
            <li key={answer.batchId} className="rounded-md border border-line bg-sheet px-3 py-2">
              <span className="tie-label">{answer.label}</span>
              <Told answer={answer} />
              {ahead && <p className="text-sm tabular-nums">{ahead.before.balance === ahead.after.balance ? t('same') : t('balance', { before: ahead.before.balance, after: ahead.after.balance })}</p>}
            </li>
          );
        })}
      </ul>
      <div className="sticky bottom-0 -mx-4 mt-4 flex gap-2 border-t border-line bg-paper px-4 py-2">
        <button type="button" onClick={again} className={`${buttonClass('quiet')} narrow-button min-h-16`}>{t('change')}</button>
        <button type="button" onClick={goOn} className={`${buttonClass('main')} narrow-button min-h-16 flex-1 text-lg`}>{t('next')}</button>
      </div>
    </section>
  );
}

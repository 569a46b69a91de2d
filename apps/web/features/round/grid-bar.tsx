import { useTranslations } from 'next-intl';
import { buttonClass } from '../../ui/button-class.ts';
import { CAUSES } from './dead-panel.tsx';
import { countsOf } from './grid-cells.ts';
import { asksRoots, isRoot, rootKeys, silentCells } from './grid-roots.ts';
import type { Grid } from './use-grid.ts';

const CAUSE = 'flex min-h-14 min-w-0 cursor-pointer touch-manipulation items-center justify-center rounded-md border-2 border-line-strong bg-sheet px-1 text-center leading-tight';

/** At the thumb: what is seen of those just marked, and then the tray is told. Whatever nobody looked at is counted by nobody. */
export function GridBar({ grid }: { grid: Grid }) {
  const { celled, marks, extras, look, say, tell } = grid;
  const t = useTranslations('round.grid');
  const causes = useTranslations('entries.causes');
  const { open, dead, alive, isOnlyByCount } = countsOf(celled, marks, extras);
  if (open > 0) {
    return (
      <div role="group" aria-label={t('what', { n: open })} className="grid gap-1">
        <p role="status" className="font-semibold">{t('what', { n: open })}</p>
        <div className="grid grid-cols-3 gap-1">
          {celled.some(({ stop }) => asksRoots(stop, look)) && rootKeys(look).map((root) => <button key={root} type="button" onClick={() => say(root)} className={`${CAUSE} font-semibold`}>{t(`roots.${root}`)}</button>)}
          {CAUSES.map((cause) => <button key={cause} type="button" onClick={() => say(cause)} className={CAUSE}>{causes(cause)}</button>)}
          <button type="button" onClick={() => say('gone')} className={CAUSE}>{t('states.gone')}</button>
        </div>
      </div>
    );
  }
  return (
    <div className="grid gap-2">
      <RootsSoFar grid={grid} />
      {dead > 0 && (isOnlyByCount
        ? <p className="text-sm leading-tight">{t('onlyByCount')}</p>
        : <button type="button" onClick={() => tell(false)} className={`${buttonClass('quiet')} narrow-button leading-tight`}>{t('only', { n: dead })}</button>)}
      <button type="button" onClick={() => tell(true)} className={`${buttonClass('main')} narrow-button min-h-16 text-lg leading-tight`}>{t('all', { alive })}</button>
    </div>
  );
}

/** What was told of roots, and of how many plants nothing was: of a batch in which some are left out nothing is told. */
function RootsSoFar({ grid: { celled, marks, extras, look, sayRest } }: { grid: Grid }) {
  const t = useTranslations('round.grid');
  if (!celled.some(({ stop }) => asksRoots(stop, look))) return null;
  const [told, silent] = [Object.values(marks).filter(isRoot), silentCells(celled, marks, extras, look).length];
  if (told.length === 0 && silent === 0) return null;
  const n = (root: string): number => told.filter((one) => one === root).length;
  return (
    <div className="flex flex-wrap items-center gap-x-3 gap-y-1">
      <p role="status" className="grow text-sm leading-tight">
        {told.length === 0 ? t('rootsNone') : t('rootsSoFar', { rooted: n('rooted'), callused: n('callused'), unrooted: n('unrooted') })} {told.length > 0 && silent > 0 && t('rootsLeft', { n: silent })}
      </p>
      {silent > 0 && <button type="button" onClick={sayRest} className={`${CAUSE} px-3`}>{t('rest', { n: silent })}</button>}
    </div>
  );
}

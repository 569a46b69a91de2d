import { useTranslations } from 'next-intl';
import { buttonClass } from '../../ui/button-class.ts';
import { CAUSES } from './dead-panel.tsx';
import { countsOf } from './grid-cells.ts';
import type { Grid } from './use-grid.ts';

const CAUSE = 'flex min-h-14 min-w-0 cursor-pointer touch-manipulation items-center justify-center rounded-md border-2 border-line-strong bg-sheet px-1 text-center leading-tight';

/** At the thumb: of what those just marked died, and then the tray is told. Whatever nobody looked at is counted by nobody. */
export function GridBar({ grid: { celled, marks, extras, say, tell } }: { grid: Grid }) {
  const t = useTranslations('round.grid');
  const causes = useTranslations('entries.causes');
  const { open, dead, alive, isOnlyByCount } = countsOf(celled, marks, extras);
  if (open > 0) {
    return (
      <div role="group" aria-label={t('what', { n: open })} className="grid gap-1">
        <p role="status" className="font-semibold">{t('what', { n: open })}</p>
        <div className="grid grid-cols-3 gap-1">
          {CAUSES.map((cause) => <button key={cause} type="button" onClick={() => say(cause)} className={CAUSE}>{causes(cause)}</button>)}
          <button type="button" onClick={() => say('gone')} className={CAUSE}>{t('states.gone')}</button>
        </div>
      </div>
    );
  }
  return (
    <div className="grid gap-2">
      {dead > 0 && (isOnlyByCount
        ? <p className="text-sm leading-tight">{t('onlyByCount')}</p>
        : <button type="button" onClick={() => tell(false)} className={`${buttonClass('quiet')} narrow-button leading-tight`}>{t('only', { n: dead })}</button>)}
      <button type="button" onClick={() => tell(true)} className={`${buttonClass('main')} narrow-button min-h-16 text-lg leading-tight`}>{t('all', { alive })}</button>
    </div>
  );
}

import { useTranslations } from 'next-intl';
import { type KeyboardEvent, useMemo, useState } from 'react';
import { useNewHeading } from '../../ui/use-new-heading.ts';
import { GridBar } from './grid-bar.tsx';
import { gridRows } from './grid-cells.ts';
import { Row } from './grid-row.tsx';
import { GridTold } from './grid-told.tsx';
import { cellAfter } from './grid-way.ts';
import { LookChoice } from './look-choice.tsx';
import { type GridProps, useGrid } from './use-grid.ts';

/** A whole tray, plant by plant, as it stands on the bench: one tap for each that is dead or gone. */
export function GridView(props: GridProps) {
  const { stops, at, walk: { state: { draft }, step } } = props;
  const t = useTranslations('round.grid');
  const grid = useGrid(props);
  const [isTapping, tapAgain] = useState(false);
  const rows = useMemo(() => gridRows(grid.celled, grid.extras), [grid.celled, grid.extras]);
  const top = useNewHeading();
  const tray = stops[at]?.place ?? '';
  const { tabCell, follow, move } = useArrows(rows[0]?.parts[0]?.cells[0]?.key);
  if (grid.told && !isTapping) return <GridTold {...props} tray={tray} grid={grid} again={() => tapAgain(true)} />;
  const others = stops.filter(({ batchId, placeId }) => placeId === stops[at]?.placeId && grid.celled.every(({ stop }) => stop.batchId !== batchId));
  return (
    <section aria-labelledby="tray" className="tray-view grid gap-3">
      <p><button type="button" onClick={() => step({ step: 'go', where: at })} className="inline-flex min-h-14 cursor-pointer items-center underline">{t('byBatch')}</button></p>
      <h1 ref={top} id="tray" tabIndex={-1} className="text-xl outline-none">{t('title', { tray })}</h1>
      {grid.celled.length === 0 ? <p>{t('none')}</p> : (
        <>
          <p className="max-w-prose leading-snug">{t(draft.look === 'look' ? 'lead' : 'leadRoots')} <span className="text-sm text-ink-soft">{t('anyCell')}</span></p>
          <div className="max-w-md"><LookChoice look={draft.look} choose={(look) => step({ step: 'look', look })} /></div>
          {others.length > 0 && <p className="max-w-prose">{t('others', { labels: others.map(({ label }) => label).join(', ') })}</p>}
          <div className="tray-grid">
            {/* Arrows move among its buttons, each of which can be tapped without them. */}
            <ol className="grid content-start gap-4" onKeyDown={move} onFocus={follow}>
              {rows.map((row) => <Row key={row.key} row={row} grid={grid} tabCell={tabCell} />)}
            </ol>
            <div className="tray-bar border-t border-line bg-paper"><GridBar grid={{ ...grid, tell: (isAll) => { tapAgain(false); grid.tell(isAll); } }} /></div>
          </div>
        </>
      )}
    </section>
  );
}

/** One stop of the tab key for the whole grid; arrows lead on from there, as it stands on the screen. */
function useArrows(first: string | undefined) {
  const [tabCell, setTabCell] = useState(first);
  const cellOf = (target: EventTarget): HTMLElement | null => (target instanceof HTMLElement ? target.closest<HTMLElement>('[data-cell]') : null);
  return {
    tabCell,
    follow: ({ target }: { target: EventTarget }) => {
      const cell = cellOf(target);
      if (cell) setTabCell(cell.dataset['cell']);
    },
    move: (event: KeyboardEvent<HTMLElement>) => {
      const [here, all] = [cellOf(event.target), [...event.currentTarget.querySelectorAll<HTMLElement>('[data-cell]')]];
      if (!here) return;
      const next = all[cellAfter(all.map((cell) => cell.getBoundingClientRect()), all.indexOf(here), event.key) ?? -1];
      if (!next) return;
      event.preventDefault();
      next.focus();
    },
  };
}

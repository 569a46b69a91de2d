import { useTranslations } from 'next-intl';
import { memo } from 'react';
import { Flag } from '../../ui/flag.tsx';
import type { GridRow, Mark } from './grid-cells.ts';
import { asksRoots, isRoot } from './grid-roots.ts';
import type { Grid } from './use-grid.ts';

const CELL = 'flex size-14 shrink-0 cursor-pointer touch-manipulation flex-col items-center justify-center gap-0.5 rounded-md border-2 select-none';
const LOOKS = {
  alive: 'border-line-strong bg-sheet',
  gone: 'border-dashed border-line-strong bg-sunken',
  marked: 'border-on-straw bg-straw text-on-straw',
  rooted: 'pb-1 border-juniper bg-lichen text-on-lichen shadow-[inset_0_-4px_0_var(--juniper)]',
  callused: 'border-juniper bg-sheet',
  unrooted: 'border-line-strong bg-sheet',
  dead: 'pb-1 border-rust bg-rust-wash text-rust shadow-[inset_0_-4px_0_var(--rust)]',
} as const;

interface RowProps {
  readonly row: GridRow;
  readonly grid: Grid;
  /** The cell that the tab key leads to; arrows lead from there. */
  readonly tabCell: string | undefined;
}

/** One row of a tray, or a batch that stands in no told row: what stands in it, and a cell for each plant. */
export function Row({ row: { row, parts }, grid: { marks, extras, look, tap, add }, tabCell }: RowProps) {
  const t = useTranslations('round.grid');
  return (
    <li className="grid gap-2">
      {parts.map(({ stop, cells, isLast }) => {
        const { batchId, label, donor, held } = stop;
        const where = row === undefined ? label : t('row', { row });
        const id = `${batchId} ${row ?? 0}`;
        return (
          <div key={id} role="group" aria-labelledby={id}>
            <p id={id} className="mb-1 flex flex-wrap items-center gap-x-2">
              {row !== undefined && <strong>{where}</strong>} <span className="tie-label">{label}</span> <span className="text-sm text-ink-soft">{donor}</span>
              {held && <Flag tone="grave">{t('held')}</Flag>}
            </p>
            <div className="flex flex-wrap gap-1">
              {cells.map(({ key, at }) => <CellButton key={key} of={key} at={at} where={where} mark={marks[key]} hasRoots={asksRoots(stop, look)} isTab={key === tabCell} tap={tap} />)}
              {isLast && <button type="button" aria-label={t('more', { label })} onClick={() => add(batchId, 1)} className={`${CELL} border-dashed border-line-strong text-2xl`}>+</button>}
              {isLast && (extras[batchId] ?? 0) > 0 && <button type="button" aria-label={t('fewer', { label })} onClick={() => add(batchId, -1)} className={`${CELL} border-dashed border-line-strong text-2xl`}>−</button>}
            </div>
          </div>
        );
      })}
    </li>
  );
}

interface CellProps {
  readonly of: string;
  readonly at: number;
  readonly where: string;
  readonly mark: Mark | undefined;
  /** Whether what it has of roots is told. */
  readonly hasRoots: boolean;
  readonly isTab: boolean;
  readonly tap: (key: string) => void;
}

/** One plant: its number, a sign and a word, none of them by colour alone. Drawn anew only when it is tapped. */
const CellButton = memo(function CellButton({ of, at, where, mark, hasRoots, isTab, tap }: CellProps) {
  const t = useTranslations('round.grid');
  const causes = useTranslations('entries.causes');
  const look = lookOf(mark, hasRoots);
  const state = look === 'dead' && mark !== 'open' ? t('deadOf', { cause: causes(mark as 'brown') }) : t(`states.${look}`);
  return (
    <button type="button" data-cell={of} tabIndex={isTab ? 0 : -1} aria-label={t('cell', { where, at, state })} onClick={() => tap(of)} className={`${CELL} ${LOOKS[look]}`}>
      <span className="text-xs/none tabular-nums">{at}</span>
      <span className="text-xl/none">{t(`signs.${look}`)}</span>
      <span className="text-xs/none">{t(`short.${look === 'dead' ? (mark as 'brown') : look}`)}</span>
    </button>
  );
}, (one, other) => one.mark === other.mark && one.hasRoots === other.hasRoots && one.isTab === other.isTab && one.at === other.at);

/** What is marked while roots are asked for may yet be alive. */
function lookOf(mark: Mark | undefined, hasRoots: boolean): keyof typeof LOOKS {
  if (mark === 'gone') return 'gone';
  if (mark === 'open') return hasRoots ? 'marked' : 'dead';
  if (mark === undefined || isRoot(mark)) return mark === undefined || !hasRoots ? 'alive' : mark;
  return 'dead';
}

import { useTranslations } from 'next-intl';
import type { ReactNode } from 'react';

export interface Column<Row> {
  readonly head: ReactNode;
  readonly cell: (row: Row) => ReactNode;
  /** Numbers stand on the right, so that their places line up. */
  readonly isNumber?: boolean;
}

interface TableProps<Row> {
  readonly caption: string;
  /** The caption is read out, and not shown where a heading says the same. */
  readonly isCaptionHidden?: boolean;
  /** On a phone each row is a block of its own, its cells with their heads before them, and nothing lies off the screen. */
  readonly isStacked?: boolean;
  /** The first one names the row. */
  readonly columns: readonly Column<Row>[];
  readonly rows: readonly Row[];
  readonly keyOf: (row: Row) => string;
  readonly foot?: ReactNode;
}

const STACKED_ROW = 'max-sm:flex max-sm:flex-wrap max-sm:items-baseline max-sm:gap-x-4 max-sm:gap-y-1 max-sm:px-4 max-sm:py-3';
const STACKED_CELL = 'max-sm:block max-sm:p-0 max-sm:text-left max-sm:empty:hidden';
const HEAD_BEFORE = 'max-sm:before:mr-1.5 max-sm:before:text-sm max-sm:before:font-normal max-sm:before:text-ink-soft max-sm:before:content-[attr(data-head)]';

/** Rows of a bench. Scrolls sideways by itself when the screen is narrow, by keyboard too. */
export function Table<Row>({ caption, isCaptionHidden = false, isStacked = false, columns, rows, keyOf, foot }: TableProps<Row>) {
  const t = useTranslations('ui');
  // A row that is laid out as a block is no row any more to a browser, unless it is told so.
  const role = (name: string) => (isStacked ? name : undefined);
  const stacked = (classes: string) => (isStacked ? classes : '');
  return (
    <div role="region" aria-label={t('scrollTable', { caption })} tabIndex={0} className="overflow-x-auto rounded-lg border border-line bg-sheet">
      <table role={role('table')} className={`w-full border-collapse text-left ${stacked('max-sm:block')}`}>
        <caption className={isCaptionHidden ? 'sr-only' : `px-4 pt-3 pb-1 text-left font-semibold ${stacked('max-sm:block')}`}>{caption}</caption>
        <thead role={role('rowgroup')} className={`border-b-2 border-line-strong ${stacked('max-sm:sr-only')}`}>
          <tr role={role('row')}>
            {columns.map(({ head, isNumber }, at) => (
              <th key={at} role={role('columnheader')} scope="col" className={`px-4 py-3 align-bottom text-sm font-semibold text-ink-soft ${isNumber ? 'text-right' : ''}`}>
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody role={role('rowgroup')} className={stacked('max-sm:block')}>
          {rows.map((row) => (
            <tr key={keyOf(row)} role={role('row')} className={`border-b border-line last:border-b-0 hover:bg-lichen/40 ${stacked(STACKED_ROW)}`}>
              {columns.map(({ head, cell, isNumber }, at) => {
                const look = `px-4 py-3 ${isNumber ? 'text-right' : ''} ${stacked(STACKED_CELL)}`;
                return at === 0 ? (
                  <th key={at} role={role('rowheader')} scope="row" className={`${look} font-semibold ${stacked('max-sm:basis-full')}`}>
                    {cell(row)}
                  </th>
                ) : (
                  <td key={at} role={role('cell')} data-head={isStacked && typeof head === 'string' ? head : undefined} className={`${look} ${stacked(typeof head === 'string' ? HEAD_BEFORE : '')}`}>
                    {cell(row)}
                  </td>
                );
              })}
            </tr>
          ))}
        </tbody>
        {foot && <tfoot role={role('rowgroup')} className="border-t-2 border-line-strong font-semibold">{foot}</tfoot>}
      </table>
    </div>
  );
}

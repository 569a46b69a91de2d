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
  /** The first one names the row. */
  readonly columns: readonly Column<Row>[];
  readonly rows: readonly Row[];
  readonly keyOf: (row: Row) => string;
  readonly foot?: ReactNode;
}

/** Rows of a bench. Scrolls sideways by itself when the screen is narrow, by keyboard too. */
export function Table<Row>({ caption, isCaptionHidden = false, columns, rows, keyOf, foot }: TableProps<Row>) {
  const t = useTranslations('ui');
  return (
    <div role="region" aria-label={t('scrollTable', { caption })} tabIndex={0} className="overflow-x-auto rounded-lg border border-line bg-sheet">
      <table className="w-full border-collapse text-left">
        <caption className={isCaptionHidden ? 'sr-only' : 'px-4 pt-3 pb-1 text-left font-semibold'}>{caption}</caption>
        <thead className="border-b-2 border-line-strong">
          <tr>
            {columns.map(({ head, isNumber }, at) => (
              <th key={at} scope="col" className={`px-4 py-3 align-bottom text-sm font-semibold text-ink-soft ${isNumber ? 'text-right' : ''}`}>
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr key={keyOf(row)} className="border-b border-line last:border-b-0 hover:bg-lichen/40">
              {columns.map(({ cell, isNumber }, at) => {
                const look = `px-4 py-3 ${isNumber ? 'text-right' : ''}`;
                return at === 0 ? (
                  <th key={at} scope="row" className={`${look} font-semibold`}>
                    {cell(row)}
                  </th>
                ) : (
                  <td key={at} className={look}>
                    {cell(row)}
                  </td>
                );
              })}
            </tr>
          ))}
        </tbody>
        {foot && <tfoot className="border-t-2 border-line-strong font-semibold">{foot}</tfoot>}
      </table>
    </div>
  );
}

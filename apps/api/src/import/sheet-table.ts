import { SHEET_ROWS } from '@sprigline/contract';
import { DomainError } from '@sprigline/domain';
import { parse } from 'csv-parse';
import { Readable } from 'node:stream';

export type SheetDelimiter = ',' | ';' | '\t';

export interface SheetTable {
  readonly delimiter: SheetDelimiter;
  readonly headings: readonly string[];
  /** Rows with something in them; `row` is what a spreadsheet shows, the heading being 1. */
  readonly rows: readonly { readonly row: number; readonly cells: readonly string[] }[];
}

/** Breath for other requests while a long sheet is read: after so many rows. */
const ROWS_A_BREATH = 2_000;

/**
 * The cells of a sheet (RFC 4180, with `;` or tab as well).
 *
 * @throws DomainError `import/not-a-table` naming the line, `import/no-rows`, `import/too-many-rows`
 */
export async function tableOfSheet(text: string): Promise<SheetTable> {
  const delimiter = delimiterOf(text);
  const parser = Readable.from([text]).pipe(parse({ delimiter, relax_column_count: true, bom: true, max_record_size: 256 * 1024 }));
  let headings: string[] | undefined;
  const rows: { row: number; cells: string[] }[] = [];
  let row = 0;
  try {
    for await (const cells of parser as AsyncIterable<string[]>) {
      row += 1;
      if (cells.every((cell) => cell.trim() === '')) continue;
      if (!headings) headings = cells;
      else rows.push({ row, cells });
      if (rows.length > SHEET_ROWS) throw new DomainError('import/too-many-rows', 'at most 100,000 rows: bring a season at a time');
      if (row % ROWS_A_BREATH === 0) await new Promise(setImmediate);
    }
  } catch (error) {
    throw error instanceof DomainError ? error : notATable(error);
  }
  if (!headings || rows.length === 0) throw new DomainError('import/no-rows', 'the first line must hold headings, and rows must follow');
  return { delimiter, headings, rows };
}

function notATable(error: unknown): DomainError {
  const line = (error as { lines?: unknown }).lines;
  const where = typeof line === 'number' ? ` near line ${line}` : '';
  return new DomainError('import/not-a-table', `a quotation mark opens a cell and none closes it${where}: mend it and choose the file again`, {
    line: typeof line === 'number' ? line : 0,
  });
}

/** The mark that stands most often in the first line, outside quotation marks. */
function delimiterOf(text: string): SheetDelimiter {
  const first = (/^(?:\uFEFF)?\s*([^\r\n]*)/.exec(text)?.[1] ?? '').replace(/"[^"]*"/g, '');
  const counted = ([',', ';', '\t'] as const).map((mark) => ({ mark, times: first.split(mark).length }));
  return counted.reduce((most, next) => (next.times > most.times ? next : most)).mark;
}

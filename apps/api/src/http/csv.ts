type CsvCell = string | number | undefined;

/**
 * A table as CSV after RFC 4180: CRLF, quoted where needed, UTF-8 with a mark so
 * that spreadsheets read it as such.
 *
 * Text that a spreadsheet would take for a formula gets an apostrophe in front;
 * numbers are left as they are.
 */
export function csvOf(headings: readonly string[], rows: readonly (readonly CsvCell[])[]): string {
  return `\uFEFF${[headings, ...rows].map((row) => row.map(cellOf).join(',')).join('\r\n')}\r\n`;
}

function cellOf(cell: CsvCell): string {
  if (cell === undefined) return '';
  if (typeof cell === 'number') return String(cell);
  const harmless = /^[=+\-@\t\r]/.test(cell) ? `'${cell}` : cell;
  return /[",\r\n]/.test(harmless) ? `"${harmless.replaceAll('"', '""')}"` : harmless;
}

import { DAY_ORDERS, type DayOrder } from './sheet.ts';

const PARTS = /^(\d{1,4})[-/.](\d{1,2})[-/.](\d{1,4})(?:[ T]00:00(?::00(?:\.0+)?)?)?$/;

/**
 * The calendar day that a cell tells under an order of its parts, as `YYYY-MM-DD`.
 *
 * Years have four digits: 25 could be a day. A midnight behind the day, as
 * spreadsheets add it, is left out; any other time is refused.
 *
 * @returns nothing when the cell is no day in that order
 */
export function dayOfCell(cell: string, order: DayOrder): string | undefined {
  const parts = PARTS.exec(cell.trim());
  if (!parts) return undefined;
  const [first = '', second = '', third = ''] = parts.slice(1);
  const [year, month, day] = order === 'ymd' ? [first, second, third] : order === 'dmy' ? [third, second, first] : [third, first, second];
  if (year.length !== 4 || month.length > 2 || day.length > 2) return undefined;
  return isDay(Number(year), Number(month), Number(day)) ? `${year}-${month.padStart(2, '0')}-${day.padStart(2, '0')}` : undefined;
}

function isDay(year: number, month: number, day: number): boolean {
  if (year < 1900 || month < 1 || month > 12 || day < 1) return false;
  const leap = year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0);
  const days = [31, leap ? 29 : 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
  return day <= (days[month - 1] ?? 0);
}

/**
 * The orders under which every cell is a day. More than one: the sheet does not
 * tell, and nobody may guess, since 03/04 is in March or in April. None: the
 * column holds something else too; then the orders that read the most cells.
 */
export function possibleDayOrders(cells: readonly string[]): DayOrder[] {
  const told = cells.filter((cell) => cell.trim() !== '');
  const readable = DAY_ORDERS.map((order) => ({ order, read: told.filter((cell) => dayOfCell(cell, order) !== undefined).length }));
  const most = Math.max(...readable.map(({ read }) => read));
  return most === 0 ? [] : readable.filter(({ read }) => read === most).map(({ order }) => order);
}

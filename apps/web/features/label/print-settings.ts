import { MOST_OFFSET, MOST_SCALE, type Printer, TRUE_PRINTER } from './printer.ts';
import { labelsOn, type LabelSheet, sheetNamed } from './sheets.ts';

/** How the labels are put on paper, as an address says it. */
export interface PrintSettings {
  readonly sheet: LabelSheet;
  readonly start: number;
  readonly copies: 1 | 2;
  readonly isWaterproof: boolean;
  readonly hasLines: boolean;
  readonly isOnlyFree: boolean;
  readonly printer: Printer;
}

/** Whatever makes no sense is as if it had not been said: a sheet is printed all the same, and seen before it is stuck on. */
export function printSettings(asked: URLSearchParams): PrintSettings {
  const sheet = sheetNamed(asked.get('sheet') ?? undefined);
  const start = Number(asked.get('start') ?? 1);
  return {
    sheet,
    start: Number.isInteger(start) && start >= 1 && start <= labelsOn(sheet) ? start : 1,
    copies: asked.get('copies') === '2' ? 2 : 1,
    isWaterproof: asked.has('wet'),
    hasLines: asked.has('lines'),
    isOnlyFree: asked.has('free'),
    printer: printerSaid(asked.get('printer') ?? undefined) ?? TRUE_PRINTER,
  };
}

/** A printer in a few characters, for a cookie and an address: `1.2_-0.5_0.998_1.003`. */
export const sayPrinter = ({ offset, scale }: Printer): string => [offset.x.toFixed(2), offset.y.toFixed(2), scale.x.toFixed(4), scale.y.toFixed(4)].join('_');

/** @returns nothing for what says no printer that is corrected */
export function printerSaid(said: string | undefined): Printer | undefined {
  const [x = Number.NaN, y = Number.NaN, across = Number.NaN, down = Number.NaN] = (said ?? '').split('_').map(Number);
  const isNear = Math.abs(x) <= MOST_OFFSET && Math.abs(y) <= MOST_OFFSET && Math.abs(across - 1) <= MOST_SCALE + 1e-9 && Math.abs(down - 1) <= MOST_SCALE + 1e-9;
  return isNear ? { offset: { x, y }, scale: { x: across, y: down } } : undefined;
}

/** Under this name a device remembers how its printer misses. It says nothing of a person. */
export const PRINTER_COOKIE = 'sprigline.label-printer';
export const PRINTER_KEPT_S = 400 * 24 * 60 * 60;

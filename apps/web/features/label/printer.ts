import { labelAt, labelsOn, type LabelSheet, type Rectangle } from './sheets.ts';

/** How a printer misses: it puts what is meant for x at `scale` times x, and `offset` further on. Millimetres. */
export interface Printer {
  readonly offset: { readonly x: number; readonly y: number };
  readonly scale: { readonly x: number; readonly y: number };
}

/** What somebody measured on the page that lines the printer up. Millimetres. */
export interface Measured {
  /** From the left edge of the paper to the cross. */
  readonly left: number;
  /** From the upper edge to the cross. */
  readonly top: number;
  /** Along the ruler across, and along the one down. */
  readonly across: number;
  readonly down: number;
}

/** Where the cross is meant to be, and how long the rulers. */
export const CROSS = { x: 40, y: 40 };
export const RULERS = { across: 120, down: 180 };

/** A printer that misses by more has its paper in askew, or prints to fit: that wants mending there. */
export const MOST_OFFSET = 3;
export const MOST_SCALE = 0.02;

/** This much at the edge of a label stays white, so that a printer may miss by it. */
export const WHITE_EDGE = 1.5;

export const TRUE_PRINTER: Printer = { offset: { x: 0, y: 0 }, scale: { x: 1, y: 1 } };

/**
 * How a printer misses, from what was measured.
 *
 * @returns nothing when it misses by more than 3 mm or 2 %, or where something was not measured
 */
export function printerOf({ left, top, across, down }: Measured): Printer | undefined {
  const scale = { x: across / RULERS.across, y: down / RULERS.down };
  const offset = { x: left - CROSS.x * scale.x, y: top - CROSS.y * scale.y };
  const isNear = [scale.x, scale.y].every((one) => Math.abs(one - 1) <= MOST_SCALE + 1e-9) && [offset.x, offset.y].every((one) => Math.abs(one) <= MOST_OFFSET + 1e-9);
  return isNear ? { offset, scale } : undefined;
}

/**
 * Where to draw a label so that it comes out in its place.
 *
 * @param nth from 0, row by row
 */
export function drawnAt(sheet: LabelSheet, nth: number, { offset, scale }: Printer): Rectangle {
  const { x, y, width, height } = labelAt(sheet, nth);
  return { x: (x - offset.x) / scale.x, y: (y - offset.y) / scale.y, width: width / scale.x, height: height / scale.y };
}

/**
 * The correction, or as much of it as leaves every label on the paper: on a sheet without margins the outermost labels
 * would be cut off by a whole one.
 *
 * @returns what to print with, and whether it is less than what was measured
 */
export function correctionFor(sheet: LabelSheet, printer: Printer): { printer: Printer; isLess: boolean } {
  for (let parts = PARTS; parts > 0; parts -= 1) {
    const some = partOf(printer, parts / PARTS);
    if (isOnPaper(sheet, some)) return { printer: some, isLess: parts < PARTS };
  }
  return { printer: TRUE_PRINTER, isLess: true };
}
const PARTS = 20;

const partOf = ({ offset, scale }: Printer, part: number): Printer => ({
  offset: { x: offset.x * part, y: offset.y * part },
  scale: { x: 1 + (scale.x - 1) * part, y: 1 + (scale.y - 1) * part },
});

/** Whether all that may be drawn on lies on the paper; the first label and the last are the outermost. */
function isOnPaper(sheet: LabelSheet, printer: Printer): boolean {
  return [0, labelsOn(sheet) - 1].every((nth) => {
    const { x, y, width, height } = printedPart(drawnAt(sheet, nth, printer));
    return x >= 0 && y >= 0 && x + width <= sheet.width && y + height <= sheet.height;
  });
}

/** The part of a label that is drawn on. */
export const printedPart = ({ x, y, width, height }: Rectangle): Rectangle => ({ x: x + WHITE_EDGE, y: y + WHITE_EDGE, width: width - 2 * WHITE_EDGE, height: height - 2 * WHITE_EDGE });

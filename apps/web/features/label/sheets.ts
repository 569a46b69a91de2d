/** Millimetres throughout, from the upper left corner of the paper. */
export interface LabelSheet {
  readonly id: string;
  readonly paper: 'A4' | 'Letter' | 'roll';
  readonly width: number;
  readonly height: number;
  readonly columns: number;
  readonly rows: number;
  readonly label: { readonly width: number; readonly height: number };
  /** Upper left corner of the first label. */
  readonly corner: { readonly x: number; readonly y: number };
  /** From the corner of a label to that of the next. */
  readonly pitch: { readonly x: number; readonly y: number };
}

export interface Rectangle {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

type Sizes = readonly [columns: number, rows: number, width: number, height: number, left: number, top: number, pitchX?: number, pitchY?: number];

const sheet = (paper: 'A4' | 'Letter', [width, height]: readonly [number, number], [columns, rows, w, h, left, top, pitchX = w, pitchY = h]: Sizes): LabelSheet => ({
  id: `${paper.toLowerCase()}-${columns}x${rows}-${w}x${h}`, paper, width, height, columns, rows, label: { width: w, height: h }, corner: { x: left, y: top }, pitch: { x: pitchX, y: pitchY },
});
const a4 = (...sizes: Sizes): LabelSheet => sheet('A4', [210, 297], sizes);
const letter = (...sizes: Sizes): LabelSheet => sheet('Letter', [215.9, 279.4], sizes);
/** One label a page, as label printers take it. */
const single = (width: number, height: number): LabelSheet =>
  ({ id: `roll-${width}x${height}`, paper: 'roll', width, height, columns: 1, rows: 1, label: { width, height }, corner: { x: 0, y: 0 }, pitch: { x: width, y: height } });

/**
 * Sheets by their dimensions, as they stand on the packet. None is lower than 21 mm: a code of 33 modules and four light
 * ones on each side is 20.5 mm high, with modules of half a millimetre, and a phone reads no smaller ones in the wet.
 */
export const SHEETS: readonly LabelSheet[] = [
  a4(3, 8, 70, 37, 0, 0.5),
  a4(3, 7, 63.5, 38.1, 7.2, 15.15, 66),
  a4(2, 7, 99.1, 38.1, 4.65, 15.15, 101.6),
  a4(4, 10, 48.5, 25.4, 8, 21.5),
  a4(5, 13, 38.1, 21.2, 4.75, 10.7, 40.6),
  a4(2, 4, 99.1, 67.7, 4.65, 13.1, 101.6),
  letter(3, 10, 66.7, 25.4, 4.75, 12.7, 69.85),
  letter(2, 7, 101.6, 33.9, 4, 21, 106.3),
  letter(2, 5, 101.6, 50.8, 4, 12.7, 106.3),
  letter(3, 5, 66.7, 50.8, 4.75, 12.7, 69.85),
  single(50, 25),
  single(57, 32),
  single(89, 36),
  single(102, 51),
];

export const labelsOn = ({ columns, rows }: LabelSheet): number => columns * rows;

/** The sheet named in an address; the first where none is, or one that nobody has. */
export const sheetNamed = (id: string | undefined): LabelSheet => SHEETS.find((one) => one.id === id) ?? (SHEETS[0] as LabelSheet);

/** Where the nth label of a sheet lies, counted from 0, row by row. */
export function labelAt({ columns, label, corner, pitch }: LabelSheet, nth: number): Rectangle {
  const [column, row] = [nth % columns, Math.floor(nth / columns)];
  return { x: corner.x + column * pitch.x, y: corner.y + row * pitch.y, width: label.width, height: label.height };
}

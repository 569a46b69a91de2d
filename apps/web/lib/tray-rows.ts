/** Where a tray lies in a picture, in per cent of it, and on which side its label is. */
export interface Frame {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
  readonly labelSide: 'top' | 'right' | 'bottom' | 'left';
}

/** A rectangle, in per cent of the picture. */
export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Where nobody told it: the whole picture, the label at its top. */
export const WHOLE_PICTURE: Frame = { left: 0, top: 0, right: 100, bottom: 100, labelSide: 'top' };

/** Where a row lies in the picture. @param row counted from the label, from 1 @param rows of the tray, equally wide */
export function boxOfRow({ left, top, right, bottom, labelSide }: Frame, row: number, rows: number): Box {
  const isDown = labelSide === 'top' || labelSide === 'bottom';
  const step = (isDown ? bottom - top : right - left) / rows;
  const before = (labelSide === 'top' || labelSide === 'left' ? row - 1 : rows - row) * step;
  return isDown ? { x: left, y: top + before, width: right - left, height: step } : { x: left + before, y: top, width: step, height: bottom - top };
}

/** The frame between two corners, in whichever order they were told, and never out of the picture. @param one, other in per cent */
export function between(one: { readonly x: number; readonly y: number }, other: { readonly x: number; readonly y: number }): Omit<Frame, 'labelSide'> {
  const [left, right] = [one.x, other.x].map(inPicture).toSorted((a, b) => a - b) as [number, number];
  const [top, bottom] = [one.y, other.y].map(inPicture).toSorted((a, b) => a - b) as [number, number];
  return { left, top, right, bottom };
}

const inPicture = (at: number): number => Math.min(100, Math.max(0, Math.round(at)));

/** "3-5" is rows 3 to 5, also told the wrong way round; nothing told is no row. */
export function rowsOf(rows: string | null): readonly number[] {
  const [one, other = one] = (rows ?? '').split('-').map(Number);
  if (!one || !other) return [];
  return Array.from({ length: Math.abs(other - one) + 1 }, (_, at) => Math.min(one, other) + at);
}

export interface TrayRow<B> {
  readonly row: number;
  readonly batches: readonly B[];
}

/** A tray row by row, and what stands in no told row. @param told how many rows the tray has, where somebody said so; never fewer than its batches stand in */
export function trayRows<B extends { readonly rows: string | null }>(told: number | null, batches: readonly B[]): { readonly rows: readonly TrayRow<B>[]; readonly elsewhere: readonly B[] } {
  const many = Math.max(told ?? 0, ...batches.flatMap(({ rows }) => rowsOf(rows)));
  return {
    rows: Array.from({ length: many }, (_, at) => ({ row: at + 1, batches: batches.filter(({ rows }) => rowsOf(rows).includes(at + 1)) })),
    elsewhere: batches.filter(({ rows }) => rowsOf(rows).length === 0),
  };
}

import type { Position } from './position.ts';

/** A position as whole steps along two directions. */
export interface Step {
  readonly a: number;
  readonly b: number;
}

/** Positions that lie on a lattice: rows and columns, square or not, with or without every second row moved by half a step. */
export interface Lattice {
  readonly steps: readonly Step[];
  /** The two directions, in the unit of the positions. */
  readonly along: Position;
  readonly across: Position;
}

/** Relative to the step: rounding of coordinates, not a crooked row. */
const STRAIGHT = 1e-6;

/** The lattice that these positions lie on; nothing where they lie anyhow. Gaps do no harm. */
export function latticeOf(positions: readonly Position[]): Lattice | undefined {
  const [columns, rows] = [scaleOf(positions.map(({ x }) => x)), scaleOf(positions.map(({ y }) => y))];
  if (!columns || !rows) return undefined;
  const at = positions.map((_, index) => ({ column: columns.marks[index]!, row: rows.marks[index]! }));
  const isOffset = at.every(({ column, row }) => (column + row) % 2 === 0) && at.some(({ column }) => column % 2 !== 0);
  return isOffset
    ? { steps: at.map(({ column, row }) => ({ a: (column - row) / 2, b: row })), along: { x: 2 * columns.step, y: 0 }, across: { x: columns.step, y: rows.step } }
    : { steps: at.map(({ column, row }) => ({ a: column, b: row })), along: { x: columns.step, y: 0 }, across: { x: 0, y: rows.step } };
}

/** Coordinates as multiples of one step, from the smallest on; nothing where there is no such step. */
function scaleOf(values: readonly number[]): { step: number; marks: number[] } | undefined {
  const sorted = [...new Set(values)].sort((a, b) => a - b);
  const [least] = sorted;
  if (least === undefined) return undefined;
  const widest = sorted.at(-1)! - least;
  const step = sorted.reduce((smallest, value, at) => (at > 0 && value - sorted[at - 1]! > STRAIGHT * widest ? Math.min(smallest, value - sorted[at - 1]!) : smallest), widest || 1);
  const marks = values.map((value) => (value - least) / step);
  return marks.every((mark) => Math.abs(mark - Math.round(mark)) < STRAIGHT * Math.max(1, mark)) ? { step, marks: marks.map(Math.round) } : undefined;
}

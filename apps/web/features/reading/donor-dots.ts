/** Beyond this nobody counts dots; a bar says as much. */
const COUNTABLE = 300;
/** Roughly the lane on a phone: as wide as this many of its heights. */
const LANE = 3.6;

export type DonorFate = 'left' | 'gone' | 'never';

export interface DonorDot {
  /** Column and row, from the middle outwards. */
  readonly column: number;
  readonly row: number;
  readonly fate: DonorFate;
}

export interface DotGrid {
  readonly columns: number;
  readonly rows: number;
}

/**
 * A grid in which every donor tree has a place, the same at all stages and in all funnels
 * that stand side by side, with dots as large as a phone allows.
 *
 * @param most donor trees of the largest funnel; 0 or more
 * @returns nothing where they are too many to count
 */
export function dotGrid(most: number): DotGrid | undefined {
  if (most > COUNTABLE) return undefined;
  const grids = Array.from({ length: 10 }, (_, at) => ({ rows: at + 1, columns: Math.max(1, Math.ceil(most / (at + 1))) }));
  const dotOf = ({ rows, columns }: DotGrid): number => Math.min(1 / rows, LANE / columns);
  // One donor is no giant: never fewer than two rows' worth of room.
  return grids.slice(1).reduce((best, grid) => (dotOf(grid) > dotOf(best) ? grid : best), { rows: 2, columns: Math.max(5, Math.ceil(most / 2)) });
}

/**
 * The donor trees of one stage.
 *
 * @param all donor trees of the whole funnel: those that never came so far keep their place
 * @param reached that came so far
 * @param left of these, with a plant here or later
 */
export function donorDots({ rows }: DotGrid, all: number, reached: number, left: number): DonorDot[] {
  return Array.from({ length: Math.max(all, reached) }, (_, at) => ({
    column: Math.floor(at / rows),
    row: at % rows,
    fate: at < left ? 'left' : at < reached ? 'gone' : 'never',
  }));
}

import { between, type Position } from './position.ts';

/** Dust of square roots: two distances that differ by less are one. */
export const DUST = 1e-9;

/**
 * For each position, which others lie nearer than a distance.
 *
 * Positions are sorted into squares of that side, so work grows with positions and their neighbours, not with all pairs.
 */
export function neighboursWithin(positions: readonly Position[], distance: number): number[][] {
  const squares = new Map<string, number[]>();
  const squareOf = ({ x, y }: Position): [number, number] => [Math.floor(x / distance), Math.floor(y / distance)];
  for (const [at, position] of positions.entries()) {
    const key = squareOf(position).join(' ');
    squares.set(key, [...(squares.get(key) ?? []), at]);
  }
  return positions.map((position, at) => {
    const [column, row] = squareOf(position);
    const near: number[] = [];
    for (let dx = -1; dx <= 1; dx += 1) {
      for (let dy = -1; dy <= 1; dy += 1) {
        for (const other of squares.get(`${column + dx} ${row + dy}`) ?? []) if (other !== at && between(position, positions[other]!) < distance - DUST) near.push(other);
      }
    }
    return near;
  });
}

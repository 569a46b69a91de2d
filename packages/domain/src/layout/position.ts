import { isCount } from '../count.ts';
import { DomainError } from '../errors.ts';

/** Where a plant can stand, in any one unit of length. */
export interface Position {
  readonly x: number;
  readonly y: number;
}

export const between = (a: Position, b: Position): number => Math.hypot(a.x - b.x, a.y - b.y);

/**
 * Rows and columns, square or with every second row moved by half a step (offset rows, a hexagonal pattern: rows are spacing x 0.866 apart).
 *
 * @param rows a whole number; together with columns at most a million positions
 * @param spacing from plant to plant in a row, above 0, in any unit
 * @throws DomainError `survival/not-a-count`; `numbers/not-a-size` for the spacing
 */
export function gridOf(rows: number, columns: number, spacing = 1, isOffset = false): Position[] {
  if (!isCount(rows) || !isCount(columns) || rows * columns > 1e6) throw new DomainError('survival/not-a-count', 'rows and columns are whole numbers, a million positions at most', { rows, columns });
  if (!(spacing > 1e-6 && spacing < 1e6)) throw new DomainError('numbers/not-a-size', 'a spacing lies between a millionth and a million', { spacing });
  const apart = isOffset ? (spacing * Math.sqrt(3)) / 2 : spacing;
  return Array.from({ length: rows * columns }, (_, at) => {
    const row = Math.floor(at / columns);
    return { x: (at % columns) * spacing + (isOffset && row % 2 === 1 ? spacing / 2 : 0), y: row * apart };
  });
}

/** Where a plant can stand, in any one unit of length. */
export interface Position {
  readonly x: number;
  readonly y: number;
}

export const between = (a: Position, b: Position): number => Math.hypot(a.x - b.x, a.y - b.y);

/** Rows and columns, square or with every second row moved by half a step (offset rows, a hexagonal pattern when rows are spacing x 0.866 apart). */
export function gridOf(rows: number, columns: number, spacing = 1, isOffset = false): Position[] {
  const apart = isOffset ? (spacing * Math.sqrt(3)) / 2 : spacing;
  return Array.from({ length: rows * columns }, (_, at) => {
    const row = Math.floor(at / columns);
    return { x: (at % columns) * spacing + (isOffset && row % 2 === 1 ? spacing / 2 : 0), y: row * apart };
  });
}

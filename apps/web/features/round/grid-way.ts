/** Where a cell is on the screen. */
export interface Spot {
  readonly left: number;
  readonly top: number;
}

/** Tops of cells of one line differ by less. Pixels. */
const SAME_LINE = 8;

/**
 * Which cell an arrow leads to.
 *
 * @param spots of all cells, in reading order
 * @param from the cell that has the focus
 * @returns nothing where there is none that way, or the key is no arrow
 */
export function cellAfter(spots: readonly Spot[], from: number, key: string): number | undefined {
  const here = spots[from];
  if (!here) return undefined;
  if (key === 'ArrowRight') return from + 1 < spots.length ? from + 1 : undefined;
  if (key === 'ArrowLeft') return from > 0 ? from - 1 : undefined;
  if (key === 'Home') return 0;
  if (key === 'End') return spots.length - 1;
  if (key !== 'ArrowDown' && key !== 'ArrowUp') return undefined;
  const beyond = spots.flatMap(({ left, top }, at) => {
    const down = key === 'ArrowDown' ? top - here.top : here.top - top;
    return down > SAME_LINE ? [{ at, down, aside: Math.abs(left - here.left) }] : [];
  });
  const line = Math.min(...beyond.map(({ down }) => down));
  return beyond.filter(({ down }) => down - line <= SAME_LINE).toSorted((one, other) => one.aside - other.aside)[0]?.at;
}

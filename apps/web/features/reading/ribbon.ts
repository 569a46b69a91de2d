export interface Piece {
  /** Per cent of the ribbon. */
  readonly from: number;
  readonly width: number;
}

/** Pieces of a ribbon that end to end make the whole of it, each as long as its number is large. */
export function ribbonOf(numbers: readonly number[]): Piece[] {
  const all = numbers.reduce((sum, n) => sum + n, 0);
  let before = 0;
  return numbers.map((n) => {
    const from = (before / all) * 100;
    before += n;
    return { from, width: (n / all) * 100 };
  });
}

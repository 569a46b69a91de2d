import type { Supply } from '@sprigline/contract';

export interface PickLine extends Supply {
  readonly n: number;
}

/** What to take: what is set aside and still there; while nothing is, what the pick proposes. */
export function pickLines(supplies: readonly Supply[]): { readonly lines: readonly PickLine[]; readonly isProposed: boolean } {
  const isProposed = supplies.every(({ reserved }) => reserved === 0);
  const lines = supplies.map((supply) => ({ ...supply, n: isProposed ? supply.proposed : supply.covered })).filter(({ n }) => n > 0);
  return { lines, isProposed };
}

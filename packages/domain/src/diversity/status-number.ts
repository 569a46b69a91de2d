import { DomainError } from '../errors.ts';
import { totalPlants } from './total-plants.ts';

/** Chance that two genes drawn from two trees are copies of one: of a tree with itself, and of relatives. Trees not inbred. */
export const COANCESTRY = { copies: 1 / 2, fullSibs: 1 / 4, parentAndChild: 1 / 4, halfSibs: 1 / 8, unrelated: 0 } as const;

export interface StatusNumber {
  /** As many unrelated trees in equal numbers would hold as much. */
  readonly status: number;
  /** Group coancestry, 0 to 1/2. */
  readonly coancestry: number;
  /** Gene diversity kept, 1 - coancestry. */
  readonly kept: number;
}

/**
 * Status number: effective donors when some donor trees are known to be related.
 *
 * For unrelated trees it is the Hill number of order 2.
 *
 * @param plants of each donor tree, at least 0
 * @param related coancestry of two different trees, by their places in `plants`; 0 to 1/2
 * @throws DomainError `diversity/no-plants`, `diversity/not-a-count`; `diversity/not-a-coancestry` outside 0 to 1/2
 *
 * Source: Lindgren D, Gea LD, Jefferson PA (1996) Silvae Genetica 45:52-59; from memory.
 */
export function statusNumber(plants: readonly number[], related: (one: number, other: number) => number): StatusNumber {
  const total = totalPlants(plants);
  let coancestry = 0;
  for (const [i, n] of plants.entries()) {
    if (n === 0) continue;
    for (const [j, m] of plants.entries()) {
      if (m === 0) continue;
      const theta = i === j ? COANCESTRY.copies : related(i, j);
      if (!(theta >= 0 && theta <= 0.5)) throw new DomainError('diversity/not-a-coancestry', 'coancestry lies between 0 and 1/2', { coancestry: theta });
      coancestry += (n / total) * (m / total) * theta;
    }
  }
  return { status: 1 / (2 * coancestry), coancestry, kept: 1 - coancestry };
}

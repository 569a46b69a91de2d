import { DomainError } from '../errors.ts';
import { isCount } from '../count.ts';

/** How much each donor tree gives, before anybody has walked a step. */
export interface EvenShares {
  /** Every donor tree gives this many, or all that it has; whole plants. */
  readonly level: number;
  /** So many donor trees with more than `level` give one more; whole, below their number. */
  readonly extra: number;
  /** Plants in all: as many as were asked for, or all that may be taken. */
  readonly total: number;
}

/**
 * Shares a number of plants among donor trees as evenly as whole plants allow.
 *
 * It fills all donor trees to one level, as water fills vessels that stand beside each
 * other; a tree with fewer gives all it has. No other sharing has more donor trees in it
 * or a smaller largest share: moving one plant from a tree to a fuller one only makes it
 * worse. Which trees give the odd plants is left open, so that the walk can be short.
 *
 * @param wanted whole plants, at least 1
 * @param most whole plants that each donor tree may give, 0 or more
 * @throws DomainError `request/not-a-count` for negative or broken numbers
 *
 * Source: max-min fairness, Bertsekas & Gallager (1992) Data Networks, 2nd ed., section 6.5.2 (from memory), for whole units.
 */
export function evenShares(wanted: number, most: readonly number[]): EvenShares {
  if (!isCount(wanted) || wanted === 0 || !most.every(isCount)) {
    throw new DomainError('request/not-a-count', 'plants are whole numbers, and at least one is wanted', { wanted });
  }

  const total = Math.min(wanted, sum(most));
  let level = 0;
  let left = total;
  const heights = [...new Set(most)].sort((a, b) => a - b);
  for (const height of heights) {
    const open = most.filter((n) => n > level).length;
    const rise = Math.min(height - level, open === 0 ? 0 : Math.floor(left / open));
    level += rise;
    left -= rise * open;
    if (level < height) break;
  }
  return { level, extra: left, total };
}

const sum = (all: readonly number[]): number => all.reduce((total, n) => total + n, 0);

import { isCount } from '../count.ts';
import { DomainError } from '../errors.ts';
import { evenShares } from '../request/even-shares.ts';

/**
 * How many plants of each donor tree to take, so that contributions are as even as the stock allows (`evenShares`).
 *
 * The odd plants come from the trees with most; of equal ones from those told first.
 *
 * @param stock plants of each donor tree, whole numbers
 * @param wanted plants in all, a whole number, at most the stock
 * @throws DomainError `survival/not-a-count`; `diversity/more-than-there-are`
 */
export function evenCounts(stock: ReadonlyMap<string, number>, wanted: number): Map<string, number> {
  const counts = [...stock.values()];
  if (!counts.every(isCount) || !isCount(wanted)) throw new DomainError('survival/not-a-count', 'plants are whole numbers', { wanted });
  const there = counts.reduce((sum, n) => sum + n, 0);
  if (wanted > there) throw new DomainError('diversity/more-than-there-are', 'more plants are wanted than there are', { wanted, there });

  const { level, extra } = wanted === 0 ? { level: 0, extra: 0 } : evenShares(wanted, counts);
  const givesMore = new Set([...stock].filter(([, n]) => n > level).sort(([, a], [, b]) => b - a).slice(0, extra).map(([donor]) => donor));
  return new Map([...stock].map(([donor, n]) => [donor, Math.min(n, level) + (givesMore.has(donor) ? 1 : 0)]));
}

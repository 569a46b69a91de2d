import { isCount } from '../count.ts';
import { DomainError } from '../errors.ts';

/**
 * How many plants of each donor tree to take, so that contributions are as even as the stock allows.
 *
 * Donors with few plants give all of them, the others equally many, to within one.
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

  const taken = new Map<string, number>();
  let rest = wanted;
  // The poorest first: each takes its share of what is left, or all it has. Equal stocks in the order told.
  const donors = [...stock].sort(([, a], [, b]) => a - b);
  for (const [at, [donor, n]] of donors.entries()) {
    const share = Math.min(n, Math.floor(rest / (donors.length - at)));
    taken.set(donor, share);
    rest -= share;
  }
  return new Map([...stock.keys()].map((donor) => [donor, taken.get(donor) ?? 0]));
}

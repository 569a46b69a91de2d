import { DomainError } from '../errors.ts';
import { totalPlants } from './total-plants.ts';

/** So near to order 1 the plain formula divides a rounding error by almost nothing. */
const NEAR_ONE = 1e-3;

/**
 * Hill number: how many equally common donors would be as diverse as these.
 *
 * Order 0 counts donors, however few plants each has; the higher the order, the
 * less rare donors weigh. Order 1 is exp(Shannon), the limit. Order 2 is
 * 1 / sum of squared shares, which for unrelated, not inbred donors is also
 * the status number of breeders.
 *
 * @param plantsPerDonor one whole number for each donor (clone group); zeros change nothing
 * @param order finite, 0 or more
 * @returns donors, from 1 up to the number of donors with plants
 * @throws DomainError `diversity/not-a-count`, `diversity/no-plants` as `totalPlants`
 * @throws DomainError `diversity/not-an-order` for a negative, infinite or broken order
 *
 * Source: Hill MO (1973) Ecology 54:427-432; Jost L (2006) Oikos 113:363-375. Status
 * number: Lindgren D, Gea LD, Jefferson PA (1996) Silvae Genetica 45:52-59. From memory.
 */
export function hillNumber(plantsPerDonor: readonly number[], order: number): number {
  const total = totalPlants(plantsPerDonor);
  if (!(order >= 0 && order < Number.POSITIVE_INFINITY)) {
    throw new DomainError('diversity/not-an-order', 'an order is a finite number, 0 or more', { order });
  }
  const shares = plantsPerDonor.filter((plants) => plants > 0).map((plants) => plants / total);
  // Rounding must not make 10 donors into 10.000000000000002.
  return Math.min(shares.length, Math.max(1, unboundedHill(shares, order)));
}

function unboundedHill(shares: readonly number[], order: number): number {
  if (order === 0) return shares.length;
  if (order === 1) return Math.exp(-sum(shares, (share) => share * Math.log(share)));

  const power = order - 1;
  if (Math.abs(power) < NEAR_ONE) {
    return Math.exp(-Math.log1p(sum(shares, (share) => share * Math.expm1(power * Math.log(share)))) / power);
  }
  // Relative to the largest share and as a logarithm: a high order would run into 0, one near 1 into infinity.
  const largest = shares.reduce((a, b) => Math.max(a, b), 0);
  const relative = sum(shares, (share) => (share / largest) ** order);
  return Math.exp(-(order * Math.log(largest) + Math.log(relative)) / power);
}

const sum = (shares: readonly number[], of: (share: number) => number): number =>
  shares.reduce((total, share) => total + of(share), 0);

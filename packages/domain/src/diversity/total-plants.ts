import { isCount } from '../count.ts';
import { DomainError } from '../errors.ts';

/**
 * All plants of all donors: the sum that shares are taken of.
 *
 * @param plantsPerDonor one whole number for each donor (clone group); zeros may be among them
 * @returns at least 1
 * @throws DomainError `diversity/not-a-count` for a negative or broken count
 * @throws DomainError `diversity/no-plants` when there is none: no donor has a share
 */
export function totalPlants(plantsPerDonor: readonly number[]): number {
  const odd = plantsPerDonor.find((plants) => !isCount(plants));
  if (odd !== undefined) {
    throw new DomainError('diversity/not-a-count', 'plants of a donor are a whole number', { plants: odd });
  }
  const total = plantsPerDonor.reduce((sum, plants) => sum + plants, 0);
  if (total === 0) throw new DomainError('diversity/no-plants', 'diversity needs at least one plant');
  return total;
}

import { totalPlants } from './total-plants.ts';

/**
 * Share of the plants that the commonest donor has.
 *
 * Stands beside effective donors because it is the figure that tells a person
 * what to do: of which donor there is too much.
 *
 * @param plantsPerDonor one whole number for each donor (clone group)
 * @returns a share, above 0, at most 1
 * @throws DomainError `diversity/not-a-count`, `diversity/no-plants` as `totalPlants`
 *
 * Source: Berger WH, Parker FL (1970) Science 168:1345-1347, their dominance; from memory.
 */
export function largestShare(plantsPerDonor: readonly number[]): number {
  const total = totalPlants(plantsPerDonor);
  return plantsPerDonor.reduce((a, b) => Math.max(a, b), 0) / total;
}

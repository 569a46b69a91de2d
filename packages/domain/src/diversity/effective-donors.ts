import { hillNumber } from './hill-number.ts';

export interface EffectiveDonors {
  /** Hill number of order 1: every donor weighs by its share. */
  readonly order1: number;
  /** Hill number of order 2: common donors weigh more; the status number for unrelated donors. */
  readonly order2: number;
}

/**
 * How many equally common donors these plants are worth.
 *
 * Both orders, because they answer two questions: order 1 asks how many donors
 * somebody meets who walks the bench, order 2 how many are left once the
 * chance is counted that two plants taken at random are copies of one tree.
 *
 * @param plantsPerDonor one whole number for each donor (clone group)
 * @returns donors; 1 <= order2 <= order1 <= donors with plants
 * @throws DomainError `diversity/not-a-count`, `diversity/no-plants` as `hillNumber`, where the sources stand
 */
export function effectiveDonors(plantsPerDonor: readonly number[]): EffectiveDonors {
  return { order1: hillNumber(plantsPerDonor, 1), order2: hillNumber(plantsPerDonor, 2) };
}

import { type VaryingChance, chanceOfNone } from '../distribution/beta-binomial.ts';
import { isCount } from '../count.ts';
import { DomainError } from '../errors.ts';

/** What is there of one donor tree, by how far it has come. */
export interface DonorStock {
  readonly lots: readonly { readonly plants: number; /** Chance of one of them to reach the planting site. */ readonly chance: VaryingChance }[];
}

/**
 * Donor trees expected to reach the planting site, given what stands on the benches today.
 *
 * A tree arrives if one of its plants does. Lots of one tree are taken to fare by themselves, plants of one lot together.
 *
 * @throws DomainError `diversity/not-a-count`; `numbers/not-a-share` as `chanceOfNone`
 */
export function donorsPlanted(donors: readonly DonorStock[]): number {
  return donors.reduce((sum, { lots }) => {
    const none = lots.reduce((product, { plants, chance }) => {
      if (!isCount(plants)) throw new DomainError('diversity/not-a-count', 'plants of a donor are a whole number', { plants });
      return product * chanceOfNone(plants, chance);
    }, 1);
    return sum + (1 - none);
  }, 0);
}

import { isCount } from '../count.ts';
import { logBinomialMass } from '../distribution/binomial-mass.ts';
import { DomainError } from '../errors.ts';
import { totalPlants } from './total-plants.ts';

/**
 * Donors expected among some plants taken at random: sum of 1 - C(N - n, m) / C(N, m).
 *
 * Makes stands of unequal size comparable ("donors in any 50 plants"), and says
 * what the next crate will hold. Only for random draws: a planting list is none.
 *
 * @param plantsPerDonor one whole number for each donor (clone group)
 * @param plantsTaken a whole number, from 0 to all plants
 * @returns donors, not rounded; all donors present when all plants are taken
 * @throws DomainError `diversity/not-a-count`, `diversity/no-plants` as `totalPlants`
 * @throws DomainError `diversity/more-than-there-are` when more are to be taken than there are
 *
 * Source: Hurlbert SH (1971) Ecology 52:577-586.
 */
export function rarefiedDonors(plantsPerDonor: readonly number[], plantsTaken: number): number {
  const total = totalPlants(plantsPerDonor);
  if (!isCount(plantsTaken)) {
    throw new DomainError('diversity/not-a-count', 'plants taken are a whole number', { plantsTaken });
  }
  if (plantsTaken > total) {
    throw new DomainError('diversity/more-than-there-are', `there are only ${total} plants to take from`, {
      there: total,
      asked: plantsTaken,
    });
  }
  return plantsPerDonor.reduce((sum, plants) => sum + chanceToMeet(plants, plantsTaken, total), 0);
}

/**
 * Chance that a draw without putting back holds a plant of a donor.
 *
 * C(N - n, m) / C(N, m) is the product of 1 - m / (N - j) for j below n, and
 * stays the same when n and m change places: the shorter product is taken, as
 * logarithms, so that neither the binomials nor a chance near 0 lose digits. A
 * product too long for that is taken from three binomial chances, whose large
 * parts cancel.
 */
function chanceToMeet(plants: number, taken: number, total: number): number {
  if (plants + taken > total) return 1;

  const [fewer, more] = plants < taken ? [plants, taken] : [taken, plants];
  if (fewer > LONG) return -Math.expm1(logOfNoneDrawn(fewer, more, total));
  let logOfMissing = 0;
  for (let drawn = 0; drawn < fewer; drawn += 1) logOfMissing += Math.log1p(-more / (total - drawn));
  return -Math.expm1(logOfMissing);
}

const LONG = 100_000;

/** Logarithm of C(N - n, m) / C(N, m): of drawing m of the N - n others when each is drawn with chance m / N. */
function logOfNoneDrawn(plants: number, taken: number, total: number): number {
  const part = taken / total;
  return logBinomialMass(0, plants, part) + logBinomialMass(taken, total - plants, part) - logBinomialMass(taken, total, part);
}

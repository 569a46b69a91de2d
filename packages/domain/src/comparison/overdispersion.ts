import { chiSquareTail } from '../distribution/chi-square-tail.ts';
import { DomainError } from '../errors.ts';
import { refuseUnlessOf } from '../proportion/outcome.ts';
import type { DonorOutcome } from '../survival/donor-ratio-interval.ts';

export interface Overdispersion {
  /** Pearson's chi-square over its degrees of freedom: 1 if plants are independent, more if those of one tree fare together. */
  readonly factor: number;
  readonly freedom: number;
  /** Chance of so much spread or more between trees that do not differ. */
  readonly chance: number;
}

/**
 * Do donor trees (or trays) differ more than chance would have them?
 *
 * @param outcomes one a donor; those without plants are left out
 * @throws DomainError `survival/not-a-count`; `survival/too-few-donors` below two with plants;
 *   `comparison/nothing-to-compare` when all plants did the same
 *
 * Source: Pearson's heterogeneity chi-square; Snedecor GW, Cochran WG (1980) Statistical Methods, 7th ed., 11.7; from memory.
 */
export function overdispersion(outcomes: readonly DonorOutcome[]): Overdispersion {
  const present = outcomes.filter(({ plants }) => plants > 0);
  for (const { successes, plants } of present) refuseUnlessOf(successes, plants);
  if (present.length < 2) throw new DomainError('survival/too-few-donors', 'spread needs at least two donors with plants', { donors: present.length });
  const [successes, plants] = [present.reduce((sum, one) => sum + one.successes, 0), present.reduce((sum, one) => sum + one.plants, 0)];
  if (successes === 0 || successes === plants) throw new DomainError('comparison/nothing-to-compare', 'all plants did the same');

  const share = successes / plants;
  const chiSquare = present.reduce((sum, one) => sum + (one.successes - one.plants * share) ** 2 / (one.plants * share * (1 - share)), 0);
  const freedom = present.length - 1;
  return { factor: chiSquare / freedom, freedom, chance: chiSquareTail(chiSquare, freedom) };
}

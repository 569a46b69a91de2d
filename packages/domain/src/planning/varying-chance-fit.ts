import { refuseUnlessOf } from '../proportion/outcome.ts';
import type { DonorOutcome } from '../survival/donor-ratio-interval.ts';
import { DomainError } from '../errors.ts';
import { refuseUnlessVarying, type VaryingChance } from '../distribution/beta-binomial.ts';

/** What is held before the programme's own figures speak: a chance, and how many plants' worth it weighs. */
export interface Prior extends VaryingChance {
  readonly plants: number;
}

export interface FittedChance extends VaryingChance {
  /** Donor trees of the programme's own that it rests on. */
  readonly donors: number;
  /** Share of the weight that is the programme's own, 0 to 1. */
  readonly ownWeight: number;
}

/**
 * The programme's own chance and how much its trees differ, drawn towards a prior that loses weight as own figures come in.
 *
 * The mean is own successes and the prior's together. How alike cuttings of one tree fare is estimated by moments from
 * five donor trees on, and is the prior's below that.
 *
 * @param outcomes one a donor tree; those without plants are left out
 * @throws DomainError `survival/not-a-count`; `numbers/not-a-share` for the prior; `numbers/not-a-size` for its weight
 *
 * Source: Kleinman JC (1973) J. Am. Stat. Assoc. 68:46-54 (moments of the beta-binomial); from memory.
 */
export function fitVaryingChance(outcomes: readonly DonorOutcome[], prior: Prior): FittedChance {
  refuseUnlessVarying(prior);
  if (!(prior.plants > 0 && prior.plants < Number.POSITIVE_INFINITY)) throw new DomainError('numbers/not-a-size', 'a prior weighs more than nothing', { plants: prior.plants });
  const present = outcomes.filter(({ plants }) => plants > 0);
  for (const { successes, plants } of present) refuseUnlessOf(successes, plants);

  const plants = present.reduce((sum, donor) => sum + donor.plants, 0);
  const successes = present.reduce((sum, donor) => sum + donor.successes, 0);
  const weight = plants + prior.plants;
  return {
    mean: (successes + prior.mean * prior.plants) / weight,
    likeness: likenessOf(present, successes / plants) ?? prior.likeness,
    donors: present.length,
    ownWeight: plants / weight,
  };
}

const DONORS_TO_SPREAD = 5;
/** A tree is never taken to root wholly or not at all on the word of a few. */
const MOST_ALIKE = 0.9;

function likenessOf(donors: readonly DonorOutcome[], mean: number): number | undefined {
  if (donors.length < DONORS_TO_SPREAD) return undefined;
  const plants = donors.reduce((sum, donor) => sum + donor.plants, 0);
  const squares = donors.reduce((sum, donor) => sum + donor.plants ** 2, 0);
  const between = donors.reduce((sum, donor) => sum + donor.plants * (donor.successes / donor.plants - mean) ** 2, 0);
  const count = donors.length;
  // Expected under independence: (count - 1) x mean x (1 - mean); what is more comes from the trees.
  const spread = mean * (1 - mean);
  const extra = between - spread * (count - 1);
  // None where all trees fared wholly alike, or no tree gave two cuttings that could.
  const room = spread * (plants - squares / plants - (count - 1));
  return room <= 0 ? undefined : Math.min(MOST_ALIKE, Math.max(0, extra / room));
}

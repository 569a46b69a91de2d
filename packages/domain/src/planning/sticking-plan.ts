import { isCount } from '../count.ts';
import { betaBinomial, refuseUnlessVarying, type VaryingChance } from '../distribution/beta-binomial.ts';
import { logBinomialMass } from '../distribution/binomial-mass.ts';
import { DomainError } from '../errors.ts';
import { refuseUnlessConfidence } from '../proportion/outcome.ts';

export interface StickingTarget {
  /** Plants wanted at the end. */
  readonly plants: number;
  /** Donor trees wanted among them, with one plant at least. */
  readonly donors: number;
}

export interface StickingPlan {
  readonly cuttingsPerDonor: number;
  readonly cuttings: number;
  /** Chance that both targets are reached. */
  readonly chance: number;
  readonly expectedPlants: number;
  readonly expectedDonors: number;
}

const MOST_PER_DONOR = 2_000;
/** What rounding takes from a chance is no shortfall. */
const DUST = 1e-12;

/**
 * Fewest cuttings of each donor tree so that plants *and* donor trees are reached with stated confidence.
 *
 * Trees differ, so that many cuttings of few trees are a worse bet than the mean rate says: the chance of
 * each tree is drawn from a beta distribution. Trees are taken for independent of each other.
 *
 * @param target whole numbers; plants may be 0
 * @param trees donor trees that can be cut from, a whole number, at least as many as are wanted
 * @param chance of a cutting to reach the end, and how alike cuttings of one tree fare
 * @param confidence between 0 and 1, both excluded
 * @throws DomainError `survival/not-a-count`, `numbers/not-a-share`, `survival/not-a-level`
 * @throws DomainError `planning/too-few-trees` when more donors are wanted than there are trees
 * @throws DomainError `planning/impossible` when not even 2,000 cuttings of each tree would do
 */
export function stickingPlan(target: StickingTarget, trees: number, chance: VaryingChance, confidence = 0.8): StickingPlan {
  refuseUnlessPlanned(target, trees, 1);
  refuseUnlessVarying(chance);
  refuseUnlessConfidence(confidence);
  if (target.donors > trees) throw new DomainError('planning/too-few-trees', 'more donor trees are wanted than can be cut from', { wanted: target.donors, trees });

  // By Markov's inequality the chance of so many plants is at most what is expected over it: what is below needs no adding up.
  const isHopeless = (each: number): boolean => trees * each * chance.mean < confidence * target.plants;
  const fallsShort = (each: number): boolean => isHopeless(each) || chanceToReach(target, trees, betaBinomial(each, chance)) < confidence - DUST;
  let [least, most] = [0, 1];
  while (fallsShort(most)) {
    if (most === MOST_PER_DONOR) throw new DomainError('planning/impossible', 'no number of cuttings of these trees reaches that target with that confidence', { trees });
    [least, most] = [most, Math.min(2 * most, MOST_PER_DONOR)];
  }
  while (most - least > 1) {
    const middle = Math.floor((least + most) / 2);
    if (fallsShort(middle)) least = middle;
    else most = middle;
  }
  return planOf(target, trees, chance, most);
}

function refuseUnlessPlanned(target: StickingTarget, trees: number, cuttingsPerDonor: number): void {
  if (![target.plants, target.donors, trees, cuttingsPerDonor].every(isCount)) throw new DomainError('survival/not-a-count', 'plants, donor trees and cuttings are whole numbers', { ...target, trees, cuttingsPerDonor });
  if (target.plants > MOST_PLANTS || trees > MOST_PLANTS) throw new DomainError('survival/not-a-count', 'more than a million are more than can be planned at once', { ...target, trees });
}

const MOST_PLANTS = 1e6;

/**
 * What a given number of cuttings of each tree brings.
 *
 * @throws DomainError `survival/not-a-count` unless all are whole numbers of at most a million; `numbers/not-a-share`
 */
export function planOf(target: StickingTarget, trees: number, chance: VaryingChance, cuttingsPerDonor: number): StickingPlan {
  refuseUnlessPlanned(target, trees, cuttingsPerDonor);
  const chances = betaBinomial(cuttingsPerDonor, chance);
  return {
    cuttingsPerDonor,
    cuttings: cuttingsPerDonor * trees,
    chance: chanceToReach(target, trees, chances),
    expectedPlants: trees * cuttingsPerDonor * chance.mean,
    expectedDonors: trees * (1 - (chances[0] ?? 1)),
  };
}

/**
 * Trees are alike beforehand, so: how many arrive is binomial, and given that, their plants are that many
 * draws from a tree that arrives.
 */
function chanceToReach({ plants, donors }: StickingTarget, trees: number, ofOne: readonly number[]): number {
  const arrives = 1 - (ofOne[0] ?? 1);
  if (arrives <= 0) return donors === 0 && plants === 0 ? 1 : 0;
  const given = ofOne.map((chance, k) => (k === 0 ? 0 : chance / arrives));
  // Chances of 0, 1, ... plants from the trees so far, all that is enough in the last place.
  let sums = Array.from({ length: plants + 1 }, (_, n) => Number(n === 0));
  let chance = 0;
  for (let arrived = 0; arrived <= trees; arrived += 1) {
    if (arrived > 0) sums = added(sums, given);
    if (arrived >= donors) chance += Math.exp(logBinomialMass(arrived, trees, arrives)) * (sums[plants] ?? 0);
  }
  return Math.min(1, chance);
}

/** The sum with one tree more; indices by hand, since this is nearly all of the work. */
function added(sums: readonly number[], one: readonly number[]): number[] {
  const most = sums.length - 1;
  const next = Array.from(sums, () => 0);
  for (let n = 0; n <= most; n += 1) {
    const chance = sums[n] ?? 0;
    if (chance === 0) continue;
    for (let k = 0; k < one.length; k += 1) {
      const at = Math.min(n + k, most);
      next[at] = (next[at] ?? 0) + chance * (one[k] ?? 0);
    }
  }
  return next;
}

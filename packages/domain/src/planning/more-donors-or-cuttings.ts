import { refuseUnlessFrequency } from '../diversity/allele-capture.ts';
import { chanceOfNone, type VaryingChance } from '../distribution/beta-binomial.ts';
import { DomainError } from '../errors.ts';
import { planOf, type StickingPlan } from './sticking-plan.ts';

export interface Choice extends StickingPlan {
  readonly trees: number;
  /** Chance that an allele of that frequency is in a plant that arrives. */
  readonly capture: number;
}

export interface MoreDonorsOrCuttings {
  readonly asPlanned: Choice;
  /** One more tree, each with as many cuttings as before. */
  readonly oneMoreTree: Choice;
  /** As many more cuttings, shared out among the same trees; rounded up. */
  readonly moreCuttings: Choice;
}

/**
 * What one more donor tree brings, beside the same work spent on more cuttings of the trees there are.
 *
 * @param trees donor trees in the plan, at least 1
 * @param cuttingsPerDonor at least 1
 * @param frequency of the allele, between 0 and 1; 0.05 is the usual one
 * @throws DomainError as `planOf`; `survival/not-a-count` below one tree or cutting; `diversity/not-a-frequency`
 */
export function moreDonorsOrCuttings(trees: number, cuttingsPerDonor: number, chance: VaryingChance, target = { plants: 0, donors: 0 }, frequency = 0.05): MoreDonorsOrCuttings {
  refuseUnlessFrequency(frequency);
  if (trees === 0 || cuttingsPerDonor === 0) throw new DomainError('survival/not-a-count', 'a plan has one tree and one cutting at least', { trees, cuttingsPerDonor });
  const choice = (ofTrees: number, each: number): Choice => {
    // Each tree stays out, or brings two copies that may both lack it.
    const lacks = chanceOfNone(each, chance) + (1 - chanceOfNone(each, chance)) * (1 - frequency) ** 2;
    return { ...planOf(target, ofTrees, chance, each), trees: ofTrees, capture: 1 - lacks ** ofTrees };
  };
  return { asPlanned: choice(trees, cuttingsPerDonor), oneMoreTree: choice(trees + 1, cuttingsPerDonor), moreCuttings: choice(trees, cuttingsPerDonor + Math.ceil(cuttingsPerDonor / trees)) };
}

import { isCount } from '../count.ts';
import { DomainError } from '../errors.ts';
import { type Dice, shuffled } from '../random/dice.ts';

export interface TrialBlock {
  /** The donor tree. */
  readonly block: string;
  /** Recipes in the order of the trays, or of the rows of a tray. */
  readonly order: readonly string[];
}

/**
 * Randomised complete blocks: every donor tree is stuck under every recipe, in an order that dice decide.
 *
 * So trees cannot be mixed up with recipes, and what light and drips do to a place falls on all recipes alike.
 *
 * @param recipes at least two, all different
 * @param donors at least two
 * @param repeats how often each recipe comes in each block, at least 1
 * @throws DomainError `comparison/nothing-to-compare` below two recipes or donors; `survival/not-a-count` for repeats
 *
 * Source: Fisher RA (1935) The Design of Experiments, chapter 4.
 */
export function randomisedBlocks(recipes: readonly string[], donors: readonly string[], repeats: number, dice: Dice): TrialBlock[] {
  if (new Set(recipes).size < 2 || new Set(recipes).size < recipes.length || donors.length < 2) throw new DomainError('comparison/nothing-to-compare', 'a trial needs two different recipes and two donor trees');
  if (!isCount(repeats) || repeats === 0) throw new DomainError('survival/not-a-count', 'each recipe comes once at least in each block', { repeats });
  return donors.map((block) => ({ block, order: Array.from({ length: repeats }, () => shuffled(recipes, dice)).flat() }));
}

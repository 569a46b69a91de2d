import type { TrialLayout } from '@sprigline/contract';
import { diceOf, fitVaryingChance, randomisedBlocks, trialPower, type VaryingChance } from '@sprigline/domain';
import { outcomesOf, type WorkedGroup } from './groups-of-rows.ts';

/** More trees than this fit no evening's work. */
export const MOST_TREES = 12;

/** What is reckoned with until a programme has figures of its own: two in five root, and trees differ as is common. Working rules. */
const BEFORE = { mean: 0.4, likeness: 0.1, plants: 10 };

/** Twenty of a hundred more is a difference worth changing a recipe for. A working rule. */
const WORTH_FINDING = 0.2;

/** Cuttings of each tree for each of the two. */
const SIZES = [4, 8, 12, 16, 24];
const WANTED_CHANCE = 0.8;
/** So many trials are simulated for each size: the chances are right to 3 in 100. */
const RUNS = 300;

/** Each tree is stuck both ways, in an order that dice decide; with the chance that such a trial finds a difference. */
export function layoutOf(groups: readonly Pick<WorkedGroup, 'rows'>[], trees: readonly string[], seed: number): Omit<TrialLayout, 'first' | 'second'> {
  const dice = diceOf(seed);
  const usual = fitVaryingChance([...outcomesOf(groups.flatMap(({ rows }) => rows)).values()], BEFORE);
  const toFind = usual.mean <= 1 - 1.5 * WORTH_FINDING ? WORTH_FINDING : -WORTH_FINDING;
  const isEnough = trees.length >= 2;
  const sizes = isEnough ? SIZES.map((cuttingsEach) => {
    const { power, error } = trialPower({ donors: trees.length, cuttingsEach }, usual, oddsFor(usual, toFind), dice, 0.05, RUNS);
    return { cuttingsEach, chance: power, error };
  }) : [];
  return {
    seed, usual: { share: usual.mean, likeness: usual.likeness, donors: usual.donors }, toFind, sizes,
    cuttingsEach: sizes.find(({ chance }) => chance >= WANTED_CHANCE)?.cuttingsEach ?? null,
    blocks: isEnough ? randomisedBlocks(['first', 'second'], trees, 1, diceOf(seed)).map(({ block, order }) => ({ donor: block, order: order.map((arm) => (arm === 'first' ? 'first' : 'second')) })) : [],
  };
}

function oddsFor({ mean }: VaryingChance, toFind: number): number {
  const odds = (share: number): number => share / (1 - share);
  return odds(mean + toFind) / odds(mean);
}

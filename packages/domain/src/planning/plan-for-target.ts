import type { VaryingChance } from '../distribution/beta-binomial.ts';
import { DomainError } from '../errors.ts';
import { afterLaterStages } from './after-later-stages.ts';
import { expectedOfLines, type ExpectedOfLines } from './expected-of-lines.ts';
import { moreDonorsOrCuttings, type MoreDonorsOrCuttings } from './more-donors-or-cuttings.ts';
import { propagulesNeeded } from './propagules-needed.ts';
import { stickingPlan, type StickingTarget } from './sticking-plan.ts';

export interface PlanForTarget {
  /** Of a cutting to come to the stage that is counted. */
  readonly toEnd: VaryingChance;
  /** Code of the refusal where no number of cuttings of these trees would do. */
  readonly refused?: string;
  readonly bets?: MoreDonorsOrCuttings;
  readonly expected?: ExpectedOfLines;
  /** On average, rounded up once and at each stage; and what each stage begins with. */
  readonly needed?: { readonly once: number; readonly eachStage: number; readonly stages: readonly number[] };
}

/** What can be said no to here without the plan being at fault. */
const NO_ANSWER = new Set(['planning/too-few-trees', 'planning/impossible']);

/**
 * What to stick of each donor tree so that plants and trees are there at the end, and what more trees or cuttings would add.
 *
 * @param trees donor trees that can be cut from, a whole number
 * @param rooting chance of a cutting to root and go on
 * @param shares of plants that come through each stage after it, above 0
 * @param confidence between 0 and 1, both excluded
 * @throws DomainError as the functions it puts together; too few trees, or no number that would do, is an answer
 */
export function planForTarget(target: StickingTarget, trees: number, rooting: VaryingChance, shares: readonly number[], confidence: number): PlanForTarget {
  const toEnd = afterLaterStages(rooting, shares);
  const rates = [rooting.mean, ...shares];
  const needed = rates.includes(0) ? {} : {
    needed: {
      once: propagulesNeeded(target.plants, rates, 'once'), eachStage: propagulesNeeded(target.plants, rates, 'each-stage'),
      stages: rates.map((_, at) => propagulesNeeded(target.plants, rates.slice(at), 'each-stage')),
    },
  };
  try {
    const { cuttingsPerDonor } = stickingPlan(target, trees, toEnd, confidence);
    const lines = Array.from({ length: trees }, () => cuttingsPerDonor);
    return { toEnd, ...needed, bets: moreDonorsOrCuttings(trees, cuttingsPerDonor, toEnd, target), expected: expectedOfLines(lines, toEnd) };
  } catch (error) {
    if (error instanceof DomainError && NO_ANSWER.has(error.code)) return { toEnd, ...needed, refused: error.code };
    throw error;
  }
}

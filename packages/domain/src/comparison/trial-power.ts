import { refuseUnlessVarying, type VaryingChance } from '../distribution/beta-binomial.ts';
import { betaQuantile } from '../distribution/beta-quantile.ts';
import { logBinomialMass } from '../distribution/binomial-mass.ts';
import { isCount } from '../count.ts';
import { DomainError } from '../errors.ts';
import { refuseUnlessConfidence } from '../proportion/outcome.ts';
import type { Dice } from '../random/dice.ts';
import { mantelHaenszel } from './mantel-haenszel.ts';
import { tells, type TwoByTwo } from './two-by-two.ts';

export interface TrialDesign {
  readonly donors: number;
  /** Cuttings of each donor tree under each of the two recipes. */
  readonly cuttingsEach: number;
}

export interface TrialPower {
  /** Chance that such a trial finds the difference. */
  readonly power: number;
  /** Standard error of `power` that comes from simulating. */
  readonly error: number;
  readonly runs: number;
}

/**
 * Would a trial in blocks of donor trees find a difference, if there is one?
 *
 * Simulated: each tree has a chance of its own under the usual recipe, the other recipe multiplies its odds, and the
 * trial is read with Cochran-Mantel-Haenszel.
 *
 * @param design whole numbers, at least 2 donors and 1 cutting
 * @param usual chance of a cutting under the usual recipe, and how alike cuttings of one tree fare
 * @param oddsRatio what the other recipe does to the odds, above 0
 * @param level below which a chance counts as found, such as 0.05
 * @param runs trials simulated, at least 1; 1,000 give an error of 0.016 at most
 * @throws DomainError `survival/not-a-count`, `survival/not-a-level`, `numbers/not-a-share`, `numbers/not-a-size`
 */
export function trialPower(design: TrialDesign, usual: VaryingChance, oddsRatio: number, dice: Dice, level = 0.05, runs = 1_000): TrialPower {
  if (![design.donors, design.cuttingsEach, runs].every(isCount) || design.donors < 2 || design.cuttingsEach < 1 || runs < 1) throw new DomainError('survival/not-a-count', 'a trial needs two donor trees, a cutting of each, and a run', { ...design, runs });
  if (!(oddsRatio > 0 && oddsRatio < Number.POSITIVE_INFINITY)) throw new DomainError('numbers/not-a-size', 'an odds ratio is a finite number above 0', { oddsRatio });
  refuseUnlessConfidence(level);
  refuseUnlessVarying(usual);

  const treeChances = chanceGrid(usual);
  let found = 0;
  for (let run = 0; run < runs; run += 1) {
    const strata = Array.from({ length: design.donors }, () => throwTree(design.cuttingsEach, treeChances, oddsRatio, dice)).filter(tells);
    if (strata.length > 0 && mantelHaenszel(strata).chance < level) found += 1;
  }
  const power = found / runs;
  return { power, error: Math.sqrt((power * (1 - power)) / runs), runs };
}

/** Chances that a tree may have, equally likely: the middles of two hundred equal parts of the beta distribution. */
function chanceGrid({ mean, likeness }: VaryingChance): number[] {
  if (likeness < ALIKE || mean === 0 || mean === 1) return [mean];
  const size = 1 / likeness - 1;
  return Array.from({ length: GRID }, (_, at) => betaQuantile((at + 0.5) / GRID, mean * size, (1 - mean) * size));
}

const GRID = 200;
/** Trees that differ by less than a thousandth do not differ in any trial. */
const ALIKE = 1e-6;

function throwTree(cuttings: number, treeChances: readonly number[], oddsRatio: number, dice: Dice): TwoByTwo {
  const p = treeChances[Math.floor(dice() * treeChances.length)]!;
  const helped = 1 / (1 + (1 - p) / (p * oddsRatio));
  const [usual, other] = [throwBinomial(cuttings, p, dice), throwBinomial(cuttings, helped, dice)];
  return { first: { yes: other, no: cuttings - other }, second: { yes: usual, no: cuttings - usual } };
}

function throwBinomial(n: number, p: number, dice: Dice): number {
  let left = dice();
  for (let k = 0; k < n; k += 1) {
    left -= Math.exp(logBinomialMass(k, n, p));
    if (left < 0) return k;
  }
  return n;
}

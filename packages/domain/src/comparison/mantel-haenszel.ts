import { chiSquareTail } from '../distribution/chi-square-tail.ts';
import { normalQuantile } from '../distribution/normal.ts';
import { DomainError } from '../errors.ts';
import { refuseUnlessConfidence } from '../proportion/outcome.ts';
import { refuseUnlessCounts, tells, type TwoByTwo } from './two-by-two.ts';

export interface MantelHaenszel {
  readonly chiSquare: number;
  /** Chance of so large a difference or a larger one, if the two groups were alike within each stratum. */
  readonly chance: number;
  /** Odds in the first group over those in the second, common to all strata; 0 or infinite where one side is empty. */
  readonly oddsRatio: number;
  /** Missing where the odds ratio is 0 or infinite. */
  readonly lower?: number;
  readonly upper?: number;
  /** Strata in which both groups and both ends were seen; the others tell nothing. */
  readonly tellingStrata: number;
}

interface How {
  /** Takes a half off a difference of a half and more, for few plants. On unless told. */
  readonly isCorrected?: boolean;
  readonly confidence?: number;
}

/**
 * Cochran-Mantel-Haenszel: two groups compared within each stratum (donor tree), and the strata added up.
 *
 * So a recipe is not praised for having been given the better trees. It asks for one common direction:
 * where a recipe helps some trees and harms others, it finds less than there is.
 *
 * @param strata one table a stratum, whole numbers of plants
 * @throws DomainError `survival/not-a-count`, `survival/not-a-level`; `comparison/nothing-to-compare` when no stratum tells anything
 *
 * Source: Mantel N, Haenszel W (1959) J. Natl. Cancer Inst. 22:719-748; variance of the log odds ratio by
 * Robins J, Breslow N, Greenland S (1986) Biometrics 42:311-323; as `mantelhaen.test` in R.
 */
export function mantelHaenszel(strata: readonly TwoByTwo[], { isCorrected = true, confidence = 0.95 }: How = {}): MantelHaenszel {
  strata.forEach(refuseUnlessCounts);
  refuseUnlessConfidence(confidence);
  const telling = strata.filter(tells);
  if (telling.length === 0) throw new DomainError('comparison/nothing-to-compare', 'in no stratum were both groups there with both ends');

  const { gap, variance } = telling.reduce((sum, { first, second }) => {
    const [m, n, yes, no] = [first.yes + first.no, second.yes + second.no, first.yes + second.yes, first.no + second.no];
    const all = m + n;
    return { gap: sum.gap + first.yes - (m * yes) / all, variance: sum.variance + (m / all) * (n / all) * (yes / (all - 1)) * no };
  }, { gap: 0, variance: 0 });
  // R's rule: a difference of less than a half is left as it is.
  const correction = isCorrected && Math.abs(gap) >= 0.5 ? 0.5 : 0;
  const chiSquare = (Math.abs(gap) - correction) ** 2 / variance;
  return { chiSquare, chance: chiSquareTail(chiSquare, 1), ...commonOdds(telling, confidence), tellingStrata: telling.length };
}

function commonOdds(strata: readonly TwoByTwo[], confidence: number): Pick<MantelHaenszel, 'oddsRatio' | 'lower' | 'upper'> {
  let [r, s, pr, mixed, qs] = [0, 0, 0, 0, 0];
  for (const { first, second } of strata) {
    const all = first.yes + first.no + second.yes + second.no;
    const [along, against] = [(first.yes / all) * second.no, (first.no / all) * second.yes];
    const [same, other] = [(first.yes + second.no) / all, (first.no + second.yes) / all];
    r += along;
    s += against;
    pr += same * along;
    mixed += same * against + other * along;
    qs += other * against;
  }
  const oddsRatio = r / s;
  if (r === 0 || s === 0) return { oddsRatio: r === 0 ? 0 : Number.POSITIVE_INFINITY };
  const error = Math.sqrt(pr / (2 * r * r) + mixed / (2 * r * s) + qs / (2 * s * s));
  const z = normalQuantile((1 + confidence) / 2);
  return { oddsRatio, lower: oddsRatio * Math.exp(-z * error), upper: oddsRatio * Math.exp(z * error) };
}

import { betaQuantile } from '../distribution/beta-quantile.ts';
import type { Interval } from '../survival/interval.ts';
import { refuseUnlessConfidence, refuseUnlessOf } from './outcome.ts';

/**
 * Clopper-Pearson interval on a share: covers the truth at least as often as it says, whatever the truth is.
 *
 * Wider than it need be, so for promises and permits, where being wrong is worse than being vague;
 * `wilsonInterval` is the one for reading a bench.
 *
 * @param successes plants that did it; a whole number, 0 <= successes <= plants
 * @param plants plants looked at; a whole number, at least 1
 * @param confidence two-sided, between 0 and 1, both excluded
 * @throws DomainError `survival/not-a-count`, `survival/no-plants`, `survival/not-a-level`
 *
 * Source: Clopper CJ, Pearson ES (1934) Biometrika 26:404-413; by beta quantiles, as `binom.test` in R.
 */
export function clopperPearsonInterval(successes: number, plants: number, confidence = 0.95): Interval {
  refuseUnlessOf(successes, plants);
  refuseUnlessConfidence(confidence);
  const outside = (1 - confidence) / 2;
  return {
    lower: successes === 0 ? 0 : betaQuantile(outside, successes, plants - successes + 1),
    upper: successes === plants ? 1 : betaQuantile(1 - outside, successes + 1, plants - successes),
  };
}

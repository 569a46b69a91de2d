import type { LogisticRow } from './logistic-regression.ts';
import { logOdds, shareAt } from './log-odds.ts';

/** Below this many clusters the normal distribution is too sure of itself. A working rule. */
export const FEW_CLUSTERS = 30;

/**
 * Covariance of the estimates with clusters, not plants, as what was tried (the sandwich).
 *
 * @param inverse of the information at the estimates
 * @returns with the factor C / (C - 1) x (N - 1) / (N - k) for few clusters: C clusters, N plants, k estimates
 */
export function clusteredCovariance(rows: readonly LogisticRow[], estimates: readonly number[], inverse: readonly (readonly number[])[]): number[][] {
  const scores = new Map<string, number[]>();
  for (const { terms, successes, plants, cluster } of rows) {
    const score = scores.get(cluster) ?? estimates.map(() => 0);
    scores.set(cluster, score);
    const odds = logOdds(terms, estimates);
    const gap = successes * shareAt(-odds) - (plants - successes) * shareAt(odds);
    for (const [at, x] of [1, ...terms].entries()) score[at]! += x * gap;
  }
  const plants = rows.reduce((sum, row) => sum + row.plants, 0);
  const [c, k] = [scores.size, estimates.length];
  const factor = (c / (c - 1)) * ((plants - 1) / Math.max(1, plants - k));
  // What each cluster pulls at the estimates.
  const pulls = [...scores.values()].map((score) => inverse.map((row) => row.reduce((sum, value, at) => sum + value * score[at]!, 0)));
  return estimates.map((_, i) => estimates.map((_value, j) => factor * pulls.reduce((sum, pull) => sum + pull[i]! * pull[j]!, 0)));
}

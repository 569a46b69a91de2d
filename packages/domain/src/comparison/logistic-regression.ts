import { DomainError } from '../errors.ts';
import { inverseOf } from '../matrix/cholesky.ts';
import { normalQuantile, normalTail } from '../distribution/normal.ts';
import { refuseUnlessConfidence, refuseUnlessOf } from '../proportion/outcome.ts';
import { studentTQuantile } from '../survival/student-t-quantile.ts';
import { studentTTail } from '../distribution/student-t-tail.ts';
import { clusteredCovariance, FEW_CLUSTERS } from './clustered-covariance.ts';
import { logOdds, shareAt } from './log-odds.ts';

/** Plants that are alike in all that is asked: what is told of them, and what became of them. */
export interface LogisticRow {
  /** One number a term, the leading 1 of the intercept not among them. */
  readonly terms: readonly number[];
  readonly successes: number;
  readonly plants: number;
  /** The donor tree or the tray that they share; rows of one fare together. */
  readonly cluster: string;
}

export interface LogisticTerm {
  /** Change of the log odds for one more of the term. */
  readonly estimate: number;
  /** Standard error if plants were independent. */
  readonly plainError: number;
  /** Standard error with clusters as what was tried. */
  readonly standardError: number;
  readonly oddsRatio: number;
  readonly lower: number;
  readonly upper: number;
  /** Chance of so large an effect or a larger one, if there were none; from `standardError`. */
  readonly chance: number;
}

export interface LogisticRegression {
  /** The intercept first, then the terms in their order. */
  readonly terms: readonly LogisticTerm[];
  readonly clusters: number;
  /** Whether few clusters made limits wider (Student's t on clusters - 1). */
  readonly isFewClusters: boolean;
  /** Minus twice the log likelihood, without the constant of the counts. */
  readonly deviance: number;
  readonly iterations: number;
}

const MOST_ROUNDS = 50;
/** Log odds beyond this are a share of less than one in a thousand million: nothing that was counted. */
const BEYOND = 20;

/**
 * Logistic regression of a share on several things at once, with errors that know that plants of one donor tree fare together.
 *
 * @param rows counts as weights
 * @param confidence two-sided, between 0 and 1, both excluded
 * @throws DomainError `survival/not-a-count`, `survival/no-plants`, `survival/not-a-level`
 * @throws DomainError `comparison/too-few-clusters` below two clusters
 * @throws DomainError `comparison/not-told-apart` when a term follows from the others: recipe and donor mixed up, say
 * @throws DomainError `comparison/separated` when some group succeeded or failed wholly: the odds ratio has no end
 *
 * Source: McCullagh P, Nelder JA (1989) Generalized Linear Models, 4.4 (IRLS); Liang K-Y, Zeger SL (1986) Biometrika
 * 73:13-22 (clustered errors), with the usual small-sample factor; from memory.
 */
export function logisticRegression(rows: readonly LogisticRow[], confidence = 0.95): LogisticRegression {
  for (const { successes, plants } of rows) refuseUnlessOf(successes, plants);
  refuseUnlessConfidence(confidence);
  const clusters = new Set(rows.map(({ cluster }) => cluster)).size;
  if (clusters < 2) throw new DomainError('comparison/too-few-clusters', 'a comparison needs at least two donor trees or trays', { clusters });

  const { estimates, inverse, iterations } = fitted(rows);
  const covariance = clusteredCovariance(rows, estimates, inverse);
  const isFewClusters = clusters < FEW_CLUSTERS;
  const wide = isFewClusters ? studentTQuantile((1 + confidence) / 2, clusters - 1) : normalQuantile((1 + confidence) / 2);
  const terms = estimates.map((estimate, at) => {
    const standardError = Math.sqrt(Math.max(0, covariance[at]![at]!));
    const size = Math.abs(estimate) / standardError;
    return {
      estimate, plainError: Math.sqrt(inverse[at]![at]!), standardError,
      oddsRatio: Math.exp(estimate), lower: Math.exp(estimate - wide * standardError), upper: Math.exp(estimate + wide * standardError),
      chance: Math.min(1, 2 * (isFewClusters ? studentTTail(size, clusters - 1) : normalTail(size))),
    };
  });
  return { terms, clusters, isFewClusters, deviance: devianceOf(rows, estimates), iterations };
}

function fitted(rows: readonly LogisticRow[]): { estimates: number[]; inverse: number[][]; iterations: number } {
  const size = (rows[0]?.terms.length ?? 0) + 1;
  let estimates = Array.from({ length: size }, () => 0);
  for (let round = 1; round <= MOST_ROUNDS; round += 1) {
    const { information, score } = informationAt(rows, estimates);
    const inverse = inverseOf(information);
    if (!inverse) throw round === 1 ? new DomainError('comparison/not-told-apart', 'a term follows from the others') : new DomainError('comparison/separated', 'some group did wholly the same');
    const step = inverse.map((row) => row.reduce((sum, value, at) => sum + value * score[at]!, 0));
    estimates = estimates.map((value, at) => value + step[at]!);
    if (rows.some(({ terms }) => Math.abs(logOdds(terms, estimates)) > BEYOND)) throw new DomainError('comparison/separated', 'some group succeeded or failed wholly, so its odds have no end');
    if (step.every((move, at) => Math.abs(move) <= 1e-10 * (1 + Math.abs(estimates[at]!)))) return { estimates, inverse, iterations: round };
  }
  throw new DomainError('comparison/separated', 'no end was found: some group succeeded or failed wholly');
}

function informationAt(rows: readonly LogisticRow[], estimates: readonly number[]): { information: number[][]; score: number[] } {
  const information = estimates.map(() => estimates.map(() => 0));
  const score = estimates.map(() => 0);
  for (const { terms, successes, plants } of rows) {
    const share = shareAt(logOdds(terms, estimates));
    const told = [1, ...terms];
    for (const [i, x] of told.entries()) {
      score[i]! += x * (successes - plants * share);
      for (const [j, y] of told.entries()) information[i]![j]! += x * y * plants * share * (1 - share);
    }
  }
  return { information, score };
}

function devianceOf(rows: readonly LogisticRow[], estimates: readonly number[]): number {
  return -2 * rows.reduce((sum, { terms, successes, plants }) => {
    const odds = logOdds(terms, estimates);
    return sum + successes * Math.log(shareAt(odds)) + (plants - successes) * Math.log(shareAt(-odds));
  }, 0);
}

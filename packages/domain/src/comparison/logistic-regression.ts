import { DomainError } from '../errors.ts';
import { inverseOf, isDefiniteWithin } from '../matrix/cholesky.ts';
import { normalQuantile, normalTail } from '../distribution/normal.ts';
import { refuseUnlessConfidence, refuseUnlessOf } from '../proportion/outcome.ts';
import { studentTQuantile } from '../survival/student-t-quantile.ts';
import { studentTTail } from '../distribution/student-t-tail.ts';
import { clusteredCovariance, FEW_CLUSTERS } from './clustered-covariance.ts';
import { logOdds, logShareAt, shareAt } from './log-odds.ts';

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

/** Odds without an end grow by a factor of e a round. One in a thousand million is found within twenty-five. */
const MOST_ROUNDS = 50;
/** An error so small beside the plain one is none: no two clusters differ in that direction. */
const NEXT_TO_NOTHING = 1e-6;

/**
 * Logistic regression of a share on several things at once, with errors that know that plants of one donor tree fare together.
 *
 * @param rows counts as weights
 * @param confidence two-sided, between 0 and 1, both excluded
 * @throws DomainError `survival/not-a-count`, `survival/no-plants`, `survival/not-a-level`
 * @throws DomainError `numbers/not-a-size` unless all rows have the same number of terms, all of them finite
 * @throws DomainError `comparison/too-few-clusters` below two clusters, or where a term rests on one cluster alone or clusters are
 *   all alike: then its error is unknown, not nothing
 * @throws DomainError `comparison/not-told-apart` when a term follows from the others: recipe and donor mixed up, say
 * @throws DomainError `comparison/separated` when some group succeeded or failed wholly: the odds ratio has no end
 *
 * Source: McCullagh P, Nelder JA (1989) Generalized Linear Models, 4.4 (IRLS); Liang K-Y, Zeger SL (1986) Biometrika
 * 73:13-22 (clustered errors), with the usual small-sample factor; from memory.
 */
export function logisticRegression(rows: readonly LogisticRow[], confidence = 0.95): LogisticRegression {
  for (const { successes, plants } of rows) refuseUnlessOf(successes, plants);
  refuseUnlessConfidence(confidence);
  refuseUnlessTerms(rows);
  const clusters = new Set(rows.map(({ cluster }) => cluster)).size;
  if (clusters < 2) throw new DomainError('comparison/too-few-clusters', 'a comparison needs at least two donor trees or trays', { clusters });

  const { estimates, inverse, iterations } = fitted(rows);
  refuseIfOneClusterDecides(rows, estimates);
  const covariance = clusteredCovariance(rows, estimates, inverse);
  const isFewClusters = clusters < FEW_CLUSTERS;
  const wide = isFewClusters ? studentTQuantile((1 + confidence) / 2, clusters - 1) : normalQuantile((1 + confidence) / 2);
  const terms = estimates.map((estimate, at) => {
    const plainError = Math.sqrt(inverse[at]![at]!);
    const standardError = Math.sqrt(Math.max(0, covariance[at]![at]!));
    if (!(standardError > NEXT_TO_NOTHING * plainError)) throw new DomainError('comparison/too-few-clusters', 'these donor trees or trays leave nothing to judge a term by', { term: at, clusters });
    const size = Math.abs(estimate) / standardError;
    return {
      estimate, plainError, standardError,
      oddsRatio: Math.exp(estimate), lower: Math.exp(estimate - wide * standardError), upper: Math.exp(estimate + wide * standardError),
      chance: Math.min(1, 2 * (isFewClusters ? studentTTail(size, clusters - 1) : normalTail(size))),
    };
  });
  return { terms, clusters, isFewClusters, deviance: devianceOf(rows, estimates), iterations };
}

/** Without any one cluster every term must still have an estimate: else that cluster's own luck is in it and nobody can say how much. */
function refuseIfOneClusterDecides(rows: readonly LogisticRow[], estimates: readonly number[]): void {
  const whole = informationAt(rows, estimates).information;
  const ofCluster = new Map<string, LogisticRow[]>();
  for (const row of rows) {
    const own = ofCluster.get(row.cluster);
    if (own) own.push(row);
    else ofCluster.set(row.cluster, [row]);
  }
  for (const [cluster, own] of ofCluster) {
    const part = informationAt(own, estimates).information;
    const without = whole.map((line, i) => line.map((value, j) => value - part[i]![j]!));
    if (!isDefiniteWithin(without, whole)) throw new DomainError('comparison/too-few-clusters', 'a term rests on one donor tree or tray alone', { cluster });
  }
}

function refuseUnlessTerms(rows: readonly LogisticRow[]): void {
  const told = rows[0]?.terms.length;
  for (const { terms } of rows) {
    if (terms.length !== told || !terms.every(Number.isFinite)) throw new DomainError('numbers/not-a-size', 'each row has the same terms, and each term is a finite number');
  }
}

function fitted(rows: readonly LogisticRow[]): { estimates: number[]; inverse: number[][]; iterations: number } {
  let estimates = [0, ...rows[0]!.terms.map(() => 0)];
  for (let round = 1; round <= MOST_ROUNDS; round += 1) {
    const { information, score } = informationAt(rows, estimates);
    const inverse = inverseOf(information);
    if (!inverse) throw round === 1 ? new DomainError('comparison/not-told-apart', 'a term follows from the others') : new DomainError('comparison/separated', 'some group did wholly the same');
    const step = inverse.map((row) => row.reduce((sum, value, at) => sum + value * score[at]!, 0));
    const from = estimates;
    estimates = shortened(rows, from, step);
    if (step.every((move, at) => Math.abs(move) <= 1e-10 * (1 + Math.abs(from[at]!)))) return { estimates, inverse, iterations: round };
  }
  throw new DomainError('comparison/separated', 'no end was found: some group succeeded or failed wholly');
}

/** A step that leads downhill has gone too far: half of it is tried, and half of that. */
function shortened(rows: readonly LogisticRow[], from: readonly number[], step: readonly number[]): number[] {
  const before = devianceOf(rows, from);
  for (let part = 1; part > 1e-3; part /= 2) {
    const to = from.map((value, at) => value + part * step[at]!);
    if (devianceOf(rows, to) <= before + 1e-9 * before) return to;
  }
  return from.map((value, at) => value + step[at]!);
}

function informationAt(rows: readonly LogisticRow[], estimates: readonly number[]): { information: number[][]; score: number[] } {
  const information = estimates.map(() => estimates.map(() => 0));
  const score = estimates.map(() => 0);
  for (const { terms, successes, plants } of rows) {
    const odds = logOdds(terms, estimates);
    // Both shares are worked out, since 1 - share is lost where a share is nearly all.
    const [share, rest] = [shareAt(odds), shareAt(-odds)];
    const told = [1, ...terms];
    for (const [i, x] of told.entries()) {
      score[i]! += x * (successes * rest - (plants - successes) * share);
      for (const [j, y] of told.entries()) information[i]![j]! += x * y * plants * share * rest;
    }
  }
  return { information, score };
}

function devianceOf(rows: readonly LogisticRow[], estimates: readonly number[]): number {
  return -2 * rows.reduce((sum, { terms, successes, plants }) => {
    const odds = logOdds(terms, estimates);
    return sum + successes * logShareAt(odds) + (plants - successes) * logShareAt(-odds);
  }, 0);
}

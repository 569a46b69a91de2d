import { logBinomialMass } from '../distribution/binomial-mass.ts';
import type { TwoByTwo } from './two-by-two.ts';

/** Chances of each number of successes in the first group when all margins are given (Fisher's noncentral hypergeometric distribution). */
export interface Hypergeometric {
  /** Plants in the first group, in the second, and successes in both. */
  readonly m: number;
  readonly n: number;
  readonly yes: number;
  /** Fewest and most successes in the first group that the margins allow. */
  readonly least: number;
  readonly most: number;
}

export function hypergeometricOf({ first, second }: TwoByTwo): Hypergeometric {
  const [m, n, yes] = [first.yes + first.no, second.yes + second.no, first.yes + second.yes];
  return { m, n, yes, least: Math.max(0, yes - n), most: Math.min(m, yes) };
}

/** Logarithm of the chance of x at equal odds, as `dhyper(x, m, n, yes, log = TRUE)` in R; from three binomial chances, whose large parts cancel. */
export function logMass({ m, n, yes }: Hypergeometric, x: number): number {
  const p = yes / (m + n);
  const q = (m - x + n - (yes - x)) / (m + n);
  return logBinomialMass(x, m, p, q) + logBinomialMass(yes - x, n, p, q) - logBinomialMass(yes, m + n, p, q);
}

/** The chance of x + 1 over that of x, if the odds in the first group are `odds` times the other's. Falls as x rises. */
const stepAt = ({ m, n, yes }: Hypergeometric, odds: number, x: number): number => (odds * (m - x) * (yes - x)) / ((x + 1) * (n - yes + x + 1));

/** Where chances are highest. */
export function modeAt(given: Hypergeometric, odds: number): number {
  let [low, high] = [given.least, given.most];
  while (low < high) {
    const middle = Math.floor((low + high) / 2);
    if (stepAt(given, odds, middle) < 1) high = middle;
    else low = middle + 1;
  }
  return low;
}

/** So small beside the highest chance that all beyond it together are dust. */
const DUST = 1e-25;

export interface AtOdds {
  readonly mean: number;
  /** Chance of `seen` or more, and of `seen` or fewer. */
  readonly atLeast: number;
  readonly atMost: number;
}

/** Walks from the mode outwards as far as chances are more than dust: some ten standard deviations, however many plants there are. */
export function atOdds(given: Hypergeometric, odds: number, seen: number): AtOdds {
  const mode = modeAt(given, odds);
  let [total, moment, atLeast, atMost] = [0, 0, 0, 0];
  const add = (x: number, term: number): void => {
    total += term;
    moment += (x - mode) * term;
    if (x >= seen) atLeast += term;
    if (x <= seen) atMost += term;
  };
  let term = 1;
  for (let x = mode; x <= given.most && term > DUST; x += 1) {
    add(x, term);
    term *= stepAt(given, odds, x);
  }
  term = 1;
  for (let x = mode; x > given.least; x -= 1) {
    term /= stepAt(given, odds, x - 1);
    if (term <= DUST) break;
    add(x - 1, term);
  }
  return { mean: mode + moment / total, atLeast: atLeast / total, atMost: atMost / total };
}

/** Chance at equal odds of x and all beyond it, away from the mode. */
export function tailFrom(given: Hypergeometric, x: number, direction: 1 | -1): number {
  let [term, sum] = [1, 0];
  for (let at = x; at >= given.least && at <= given.most && term > 1e-18 * sum; at += direction) {
    sum += term;
    term = direction === 1 ? term * stepAt(given, 1, at) : term / stepAt(given, 1, at - 1);
  }
  return Math.exp(logMass(given, x)) * sum;
}

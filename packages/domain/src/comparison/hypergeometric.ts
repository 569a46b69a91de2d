import { logBinomialMass } from '../distribution/binomial-mass.ts';
import type { TwoByTwo } from './two-by-two.ts';

/** Chances of each number of successes in the first group when all margins are given, if the odds there are `odds` times the other's. */
export interface Hypergeometric {
  /** Fewest and most that the margins allow. */
  readonly least: number;
  readonly most: number;
  /** Logarithms of the chances up to a constant, from `least` on, at equal odds. */
  readonly logs: readonly number[];
}

/** Steps of the table at equal odds; everything else is this, weighed by odds^n. */
export function hypergeometricOf({ first, second }: TwoByTwo): Hypergeometric {
  const [m, n, yes] = [first.yes + first.no, second.yes + second.no, first.yes + second.yes];
  const [least, most] = [Math.max(0, yes - n), Math.min(m, yes)];
  const p = yes / (m + n);
  const logs = Array.from({ length: most - least + 1 }, (_, at) => logBinomialMass(least + at, m, p) + logBinomialMass(yes - least - at, n, p));
  return { least, most, logs };
}

/** Chances at given odds; they add up to 1. */
export function chancesAt({ logs }: Hypergeometric, odds: number): number[] {
  const lean = Math.log(odds);
  const weighed = logs.map((log, at) => log + at * lean);
  const top = weighed.reduce((a, b) => Math.max(a, b), Number.NEGATIVE_INFINITY);
  const chances = weighed.map((log) => Math.exp(log - top));
  const sum = chances.reduce((a, b) => a + b, 0);
  return chances.map((chance) => chance / sum);
}

/** Mean number of successes in the first group at given odds. */
export const meanAt = (table: Hypergeometric, odds: number): number => chancesAt(table, odds).reduce((sum, chance, at) => sum + chance * (table.least + at), 0);

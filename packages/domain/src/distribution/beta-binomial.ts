import { isCount } from '../count.ts';
import { DomainError } from '../errors.ts';
import { stirlingError } from './stirling-error.ts';

/** A chance that differs from tree to tree: its mean, and how alike plants of one tree fare. */
export interface VaryingChance {
  /** 0 to 1. */
  readonly mean: number;
  /** Correlation of two plants of one tree: 0 they fare as they like, near 1 a tree roots wholly or not at all. */
  readonly likeness: number;
}

/** @throws DomainError `numbers/not-a-share` unless 0 <= mean <= 1 and 0 <= likeness < 1 */
export function refuseUnlessVarying({ mean, likeness }: VaryingChance): void {
  if (!(mean >= 0 && mean <= 1 && likeness >= 0 && likeness < 1)) throw new DomainError('numbers/not-a-share', 'a mean lies between 0 and 1, a likeness from 0 to below 1', { mean, likeness });
}

/**
 * Chances of 0, 1, ... n successes among n plants of one tree (the beta-binomial distribution).
 *
 * @param n a whole number of plants, at most a million
 * @returns n + 1 chances that add up to 1
 * @throws DomainError `numbers/not-a-share` as `refuseUnlessVarying`; `survival/not-a-count` unless n is a whole number of at most a million
 *
 * Source: Skellam JG (1948) J. R. Stat. Soc. B 10:257-261; in mean and correlation, as Griffiths DA (1973) Biometrics 29:637-648; from memory.
 */
export function betaBinomial(n: number, chance: VaryingChance): number[] {
  refuseUnlessVarying(chance);
  refuseUnlessPlants(n);
  if (n > MOST) throw new DomainError('survival/not-a-count', 'so many chances are more than can be listed', { n });
  const { mean } = chance;
  const all = Array.from({ length: n + 1 }, (_, k) => k);
  if (mean === 0 || mean === 1) return all.map((k) => (k === n * mean ? 1 : 0));

  // From each chance to the next is a step: no factorial is ever needed.
  const step = stepOf(chance);
  let log = logOfNone(n, chance);
  return all.map((k) => {
    if (k > 0) log += Math.log((n - k + 1) / k) + step(k, n);
    return Math.exp(log);
  });
}

/** Longer lists of chances than anybody reads, and a machine can hold. */
const MOST = 1e6;

function refuseUnlessPlants(n: number): void {
  if (!isCount(n)) throw new DomainError('survival/not-a-count', 'plants are a whole number', { n });
}

/** So alike that no count could tell it from independence. */
const INDEPENDENT = 1e-13;

/** Logarithm of the odds of the k-th success among n. */
function stepOf({ mean, likeness }: VaryingChance): (k: number, n: number) => number {
  if (likeness < INDEPENDENT) return () => Math.log(mean / (1 - mean));
  const size = 1 / likeness - 1;
  // Whole numbers first: a shape next to nothing would be lost beside n.
  return (k, n) => Math.log((mean * size + (k - 1)) / ((1 - mean) * size + (n - k)));
}

function logOfNone(n: number, { mean, likeness }: VaryingChance): number {
  if (likeness < INDEPENDENT) return n * Math.log1p(-mean);
  const size = 1 / likeness - 1;
  if (n > LONG) return logOfNoneOfMany(n, mean * size, (1 - mean) * size, size);
  let log = 0;
  for (let plant = 0; plant < n; plant += 1) log += Math.log1p((-mean * size) / (size + plant));
  return log;
}

const LONG = 10_000;

/** ln [G(b + n) G(s) / (G(b) G(s + n))] for b = s - a, by Stirling's formula put together so that its large parts cancel. */
function logOfNoneOfMany(n: number, a: number, b: number, s: number): number {
  const rest = stirlingError(b + n) - stirlingError(s + n) - stirlingError(b) + stirlingError(s);
  return n * Math.log1p(-a / (s + n)) + (b - 0.5) * (Math.log1p(n / b) - Math.log1p(n / s)) - a * Math.log1p(n / s) + rest;
}

/** Chance that none of n plants of a tree does it. @throws DomainError as `betaBinomial` */
export function chanceOfNone(n: number, chance: VaryingChance): number {
  refuseUnlessVarying(chance);
  refuseUnlessPlants(n);
  if (chance.mean === 0 || chance.mean === 1 || n === 0) return chance.mean === 1 && n > 0 ? 0 : 1;
  return Math.exp(logOfNone(n, chance));
}

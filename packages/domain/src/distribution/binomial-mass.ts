import { deviancePart } from './deviance-part.ts';
import { stirlingError } from './stirling-error.ts';

/**
 * Natural logarithm of n! / (k! (n-k)!) p^k (1-p)^(n-k), which needs no whole k and n.
 *
 * @param k 0 <= k <= n
 * @param n above 0
 * @param p the chance, 0 <= p <= 1
 * @param q its complement, given apart since 1 - p loses what a tiny p holds
 * @returns at most 0; minus infinity where it cannot happen
 *
 * Source: Loader C (2000) Fast and accurate computation of binomial probabilities; from memory.
 */
export function logBinomialMass(k: number, n: number, p: number, q = 1 - p): number {
  if (p === 0) return k === 0 ? 0 : Number.NEGATIVE_INFINITY;
  if (q === 0) return k === n ? 0 : Number.NEGATIVE_INFINITY;
  if (k === 0) return n * logOf(q, p);
  if (k === n) return n * logOf(p, q);

  const rest = n - k;
  const smooth = stirlingError(n) - stirlingError(k) - stirlingError(rest) - deviancePart(k, n * p) - deviancePart(rest, n * q);
  return smooth + 0.5 * (Math.log(n / k) - Math.log(2 * Math.PI * rest));
}

/** ln p, from the complement where p is near 1. */
const logOf = (p: number, q: number): number => (p > 0.5 ? Math.log1p(-q) : Math.log(p));

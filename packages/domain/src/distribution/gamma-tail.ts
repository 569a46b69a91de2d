import { DomainError } from '../errors.ts';
import { deviancePart } from './deviance-part.ts';
import { refuseUnlessShape } from './shape.ts';
import { stirlingError } from './stirling-error.ts';

/**
 * Upper tail of the gamma distribution of scale 1: the regularised incomplete gamma function Q(a, x).
 *
 * @param x at least 0
 * @param a shape, above 0
 * @returns 0 to 1, small tails to full relative precision
 * @throws DomainError `numbers/not-a-shape` as `refuseUnlessShape`
 * @throws DomainError `numbers/not-a-size` when x is below 0 or no number
 *
 * Source: series DLMF 8.11.4 below the mean, continued fraction DLMF 8.9.2 above it; from memory.
 */
export function gammaTail(x: number, a: number): number {
  refuseUnlessShape(a);
  if (!(x >= 0)) throw new DomainError('numbers/not-a-size', 'must be a number of at least 0', { x });
  if (x === 0) return 1;
  if (x === Number.POSITIVE_INFINITY) return 0;

  // x^a e^-x / a!, from small parts.
  const front = Math.exp(-stirlingError(a) - deviancePart(a, x)) / Math.sqrt(2 * Math.PI * a);
  return x < a + 1 ? 1 - front * lowerSeries(x, a) : front * a * upperFraction(x, a);
}

function lowerSeries(x: number, a: number): number {
  let term = 1;
  let sum = 1;
  for (let n = 1; term > sum * 1e-17; n += 1) {
    term *= x / (a + n);
    sum += term;
  }
  return sum;
}

function upperFraction(x: number, a: number): number {
  let b = x + 1 - a;
  let c = 1e300;
  let d = 1 / b;
  let value = d;
  for (let n = 1; n < 100_000; n += 1) {
    const part = -n * (n - a);
    b += 2;
    d = 1 / safe(part * d + b);
    c = safe(b + part / c);
    const factor = d * c;
    value *= factor;
    if (Math.abs(factor - 1) < 1e-15) return value;
  }
  return value;
}

const safe = (value: number): number => (Math.abs(value) < 1e-300 ? 1e-300 : value);

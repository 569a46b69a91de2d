import { DomainError } from '../errors.ts';
import { gammaTail } from './gamma-tail.ts';

/** Chance that a standard normal variable exceeds z, `pnorm(z, lower.tail = FALSE)` in R; small tails keep their digits. */
export function normalTail(z: number): number {
  const outer = gammaTail((z * z) / 2, 0.5) / 2;
  return z >= 0 ? outer : 1 - outer;
}

/**
 * The point of the standard normal distribution below which a share lies, `qnorm` in R.
 *
 * @param share between 0 and 1, both excluded
 * @returns unitless; relative error about 1e-15
 * @throws DomainError `numbers/not-a-share` outside (0, 1)
 *
 * Source: starts from Abramowitz & Stegun 1964, 26.2.23, which is within 0.00045, and is sharpened by two of Halley's steps; from memory.
 */
export function normalQuantile(share: number): number {
  if (!(share > 0 && share < 1)) throw new DomainError('numbers/not-a-share', 'a share lies between 0 and 1', { share });
  if (share === 0.5) return 0;
  if (share > 0.5) return -normalQuantile(1 - share);

  const t = Math.sqrt(-2 * Math.log(share));
  let z = t - (2.515517 + t * (0.802853 + t * 0.010328)) / (1 + t * (1.432788 + t * (0.189269 + t * 0.001308)));
  for (let step = 0; step < 2; step += 1) {
    const density = Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);
    const miss = (normalTail(z) - share) / density;
    z += miss / (1 - (z * miss) / 2);
  }
  return -z;
}

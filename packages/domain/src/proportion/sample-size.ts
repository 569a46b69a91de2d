import { isCount } from '../count.ts';
import { normalQuantile } from '../distribution/normal.ts';
import { DomainError } from '../errors.ts';
import { refuseUnlessConfidence } from './outcome.ts';

/**
 * Plants to look at so that a share is known to within a margin.
 *
 * @param expected the share that is expected, 0 to 1; 0.5 asks for the most
 * @param margin half width of the interval, a share, above 0 and below 1
 * @param population plants that there are, a whole number of at least 1; left out: many more than are looked at
 * @param confidence two-sided, between 0 and 1, both excluded
 * @returns a whole number of at least 1, rounded up; never more than there are
 * @throws DomainError `numbers/not-a-share` for expected or margin, also for a margin that no number of plants reaches, `survival/not-a-count` for the population,
 *   `survival/not-a-level` for the confidence
 *
 * Source: Cochran WG (1977) Sampling Techniques, 3rd ed., 4.4 and 4.9 (finite population); from memory.
 */
export function sampleSize(expected: number, margin: number, population?: number, confidence = 0.95): number {
  refuseUnlessConfidence(confidence);
  if (!(expected >= 0 && expected <= 1)) throw new DomainError('numbers/not-a-share', 'an expected share lies between 0 and 1', { expected });
  if (!(margin > 0 && margin < 1)) throw new DomainError('numbers/not-a-share', 'a margin lies between 0 and 1', { margin });
  if (population !== undefined && (!isCount(population) || population === 0)) throw new DomainError('survival/not-a-count', 'a population is a whole number of at least 1', { population });

  const z = normalQuantile((1 + confidence) / 2);
  const many = ((z / margin) * z * expected * (1 - expected)) / margin;
  // Where nearly all do or none does, a look at one tells it; where many are needed of few, all of them are.
  const needed = many <= 1 ? 1 : population === undefined ? many : 1 / (1 / many + (1 - 1 / many) / population);
  const whole = Math.max(1, Math.min(population ?? Number.POSITIVE_INFINITY, upwards(needed)));
  if (!isCount(whole)) throw new DomainError('numbers/not-a-share', 'so narrow a margin asks for more plants than can be counted', { margin });
  return whole;
}

/** Rounds up, but not for the dust that division leaves: 100 / 0.5 is 200, not 201. */
export const upwards = (value: number): number => Math.ceil(value - Math.abs(value) * 1e-12);

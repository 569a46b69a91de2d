import { isCount } from '../count.ts';
import { DomainError } from '../errors.ts';
import type { Interval } from './interval.ts';

/** Two-sided 95 % point of the standard normal, `qnorm(0.975)` in R. */
const Z_95 = 1.959963984540054;
/** No confidence asks for as much; squares of larger ones run out. */
const FARTHEST = 1e6;

/**
 * Wilson score interval for a share of plants: found alive, or gone on to the next stage.
 *
 * Chosen over the textbook interval because lots are small and often all or
 * none succeed: Wilson stays inside [0, 1] and keeps a width there, where the
 * textbook one collapses to a point.
 *
 * It takes plants for independent of each other. Cuttings of one tree are not:
 * `donorRatioInterval` is the one that allows for that.
 *
 * @param successes plants that did it; a whole number, 0 <= successes <= plants
 * @param plants plants looked at; a whole number, at least 1
 * @param z standard normal point, unitless, above 0; the default gives 95 %
 * @returns the interval as shares, not per cent
 * @throws DomainError `survival/no-plants` when plants is 0: there is no answer
 * @throws DomainError `survival/not-a-count` for negative, broken or reversed counts
 * @throws DomainError `survival/not-a-level` when z is not a number above 0 and below a million
 *
 * Source: Wilson EB (1927) J. Am. Stat. Assoc. 22:209-212; recommended over the
 * alternatives by Newcombe RG (1998) Stat. Med. 17:857-872, method 3.
 */
export function wilsonInterval(successes: number, plants: number, z = Z_95): Interval {
  if (!isCount(successes) || !isCount(plants) || successes > plants) {
    throw new DomainError('survival/not-a-count', 'both must be whole numbers, successes at most plants', {
      successes,
      plants,
    });
  }
  if (plants === 0) {
    throw new DomainError('survival/no-plants', 'a survival share needs at least one plant');
  }
  if (!(z > 0 && z < FARTHEST)) {
    throw new DomainError('survival/not-a-level', 'the normal point must lie above 0 and be one that somebody could mean', { z });
  }

  const share = successes / plants;
  const zSquared = z * z;
  const denominator = 1 + zSquared / plants;
  const centre = (share + zSquared / (2 * plants)) / denominator;
  const halfWidth = (z / denominator) * Math.sqrt((share * (1 - share)) / plants + zSquared / (4 * plants * plants));

  // Exact at the ends: rounding would otherwise leave 1e-17 where the answer is 0 or 1.
  return {
    lower: successes === 0 ? 0 : centre - halfWidth,
    upper: successes === plants ? 1 : centre + halfWidth,
  };
}

import { isCount } from '../count.ts';
import { DomainError } from '../errors.ts';
import { upwards } from '../proportion/sample-size.ts';

/** Rounded up once at the end, or at each stage, since half a liner is none. The second asks for a few more. */
export type Rounding = 'once' | 'each-stage';

/**
 * Cuttings to stick so that so many reach the end, if each stage keeps its share.
 *
 * It says what is needed on average: half of all years bring fewer. `stickingPlan` is the one that can be relied on.
 *
 * @param target plants wanted at the end, a whole number
 * @param rates share that goes on from each stage, the first stage first; above 0, at most 1
 * @param rounding named on the plan, since the two differ
 * @returns a whole number
 * @throws DomainError `survival/not-a-count` for the target; `planning/impossible` for a rate of 0, or rates next to it; `numbers/not-a-share` for one
 *   outside 0 to 1, or not known: no rate is no answer, never 100 %
 *
 * Source: Landis TD, Tinus RW, McDonald SE, Barnett JP, The Container Tree Nursery Manual, vol. 1 (growing schedules); from memory.
 */
export function propagulesNeeded(target: number, rates: readonly number[], rounding: Rounding): number {
  if (!isCount(target)) throw new DomainError('survival/not-a-count', 'a target is a whole number of plants', { target });
  for (const rate of rates) if (!(rate >= 0 && rate <= 1)) throw new DomainError('numbers/not-a-share', 'a rate lies between 0 and 1', { rate });
  const needed = rounding === 'once' ? upwards(target / rates.reduce((product, rate) => product * rate, 1)) : rates.reduceRight((sum, rate) => upwards(sum / rate), target);
  if (!isCount(needed)) throw new DomainError('planning/impossible', 'so little comes through that no number of cuttings would do', { target });
  return needed;
}

import { DEFAULT_DAYS } from '../due/waiting-days.ts';
import { DomainError } from '../errors.ts';
import type { FollowedCuttings } from '../time/cutting-history.ts';
import { occupancyOf, WEEK } from '../time/rooting-shares.ts';
import type { Occupancy } from '../time/state-occupancy.ts';
import type { Prior } from './varying-chance-fit.ts';

/** What is held of a species before the programme has figures of its own: how many root, and from which day on. */
export interface TimedPrior extends Pick<Prior, 'mean' | 'plants'> {
  /** Days after sticking on which the first roots may be seen. */
  readonly firstRootsDays: number;
}

/** In so many equal parts the prior's roots come. */
const PARTS = 12;

/**
 * How cuttings fared by days since sticking: the programme's own, and a prior that weighs as many cuttings as it says.
 *
 * The prior's roots come evenly between the first roots and a year, the usual verdict; what has none then was watched until
 * then. That they come evenly is a working rule. Own cuttings outweigh it where more of them were watched.
 *
 * @param own in any order; none is no history
 * @returns shares waiting, rooted, lost, in steps of weeks told in days
 * @throws DomainError `numbers/not-a-share` for the mean; `numbers/not-a-size` unless the prior weighs more than nothing
 */
export function rootingHistory(own: readonly FollowedCuttings[], { mean, plants, firstRootsDays }: TimedPrior): Occupancy[] {
  if (!(mean >= 0 && mean <= 1)) throw new DomainError('numbers/not-a-share', 'a rate lies between 0 and 1', { rate: mean });
  if (!(plants > 0 && plants < Number.POSITIVE_INFINITY)) throw new DomainError('numbers/not-a-size', 'a prior weighs more than nothing', { plants });
  const last = Math.max(DEFAULT_DAYS.verdict, firstRootsDays + 1);
  const waits = { from: 0, unrootedAt: 0, aliveAt: last };
  const rooted = Array.from({ length: PARTS }, (_, at): FollowedCuttings => {
    const by = firstRootsDays + ((last - firstRootsDays) * at) / (PARTS - 1);
    return { ...waits, aliveAt: 0, by, end: 'rooted', plants: (plants * mean) / PARTS };
  });
  const prior: FollowedCuttings[] = [...rooted, { ...waits, by: last, end: 'waiting', plants: plants * (1 - mean) }];
  return occupancyOf([...own, ...prior.filter((row) => row.plants > 0)]).map((step) => ({ ...step, time: step.time * WEEK }));
}

import { wilsonInterval } from '../survival/wilson-interval.ts';

/** A difference of two shares and its range: -1 <= lower <= difference <= upper <= 1. */
export interface ShareDifference {
  readonly difference: number;
  readonly lower: number;
  readonly upper: number;
}

/**
 * Difference of two independent shares with Newcombe's hybrid score interval: each share's own
 * Wilson limits, squared and added.
 *
 * It takes plants for independent of each other, as Wilson does; cuttings of one tree are not.
 *
 * @param first plants that did it of those looked at; whole numbers
 * @param second the share that is taken off
 * @param z standard normal point, unitless, above 0; the default gives 95 %
 * @throws DomainError `survival/not-a-count`, `survival/no-plants`, `survival/not-a-level`
 *
 * Source: Newcombe RG (1998) Stat. Med. 17:873-890, method 10.
 */
export function newcombeDifference(first: ShareSeen, second: ShareSeen, z?: number): ShareDifference {
  const [one, two] = [wilsonInterval(first.successes, first.plants, z), wilsonInterval(second.successes, second.plants, z)];
  const [p, q] = [first.successes / first.plants, second.successes / second.plants];
  const difference = p - q;
  return {
    difference,
    lower: difference - Math.hypot(p - one.lower, two.upper - q),
    upper: difference + Math.hypot(one.upper - p, q - two.lower),
  };
}

export interface ShareSeen {
  readonly successes: number;
  readonly plants: number;
}

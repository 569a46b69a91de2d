import { DomainError } from '../errors.ts';

/** Plants that were followed alike. Times in days since they were stuck, or in any one unit. */
export interface Followed {
  /** When they came under observation; 0 unless they were received later (left truncation). */
  readonly from?: number;
  /** When what happened was seen, or until when nothing had; after `from`. */
  readonly until: number;
  /** How many; above 0. Need not be whole: a count shared out between donors is not. */
  readonly plants: number;
  /** Whether it happened (rooted, died); otherwise they were last seen without it (right censoring). */
  readonly happened: boolean;
}

/** What happens at one time, summed over all plants. */
export interface Moment {
  readonly time: number;
  readonly events: number;
  readonly censored: number;
  readonly entered: number;
  /** Under observation just before this time. */
  readonly atRisk: number;
}

/**
 * Sums up by distinct time, in order: memory grows with distinct times, not with plants.
 *
 * At one time events come first, then those last seen, then those who enter: who enters at t was not at risk at t.
 *
 * @throws DomainError `survival/no-plants` when nobody is followed
 * @throws DomainError `survival/not-a-time` for times that are no numbers, negative, or not after `from`
 * @throws DomainError `survival/not-a-count` for plants that are not finite and above 0
 */
export function momentsOf(followed: readonly Followed[]): Moment[] {
  if (followed.length === 0) throw new DomainError('survival/no-plants', 'a curve needs at least one plant');
  const at = new Map<number, { events: number; censored: number; entered: number }>();
  const of = (time: number) => {
    const known = at.get(time);
    if (known) return known;
    const made = { events: 0, censored: 0, entered: 0 };
    at.set(time, made);
    return made;
  };
  for (const { from = 0, until, plants, happened } of followed) {
    if (!(from >= 0 && until > from && until < Number.POSITIVE_INFINITY)) throw new DomainError('survival/not-a-time', 'plants are followed from 0 or later, until a later time', { from, until });
    if (!(plants > 0 && plants < Number.POSITIVE_INFINITY)) throw new DomainError('survival/not-a-count', 'a number of plants is above 0', { plants });
    of(from).entered += plants;
    of(until)[happened ? 'events' : 'censored'] += plants;
  }

  let atRisk = 0;
  return [...at]
    .sort(([a], [b]) => a - b)
    .map(([time, { events, censored, entered }]) => {
      const moment = { time, events, censored, entered, atRisk };
      atRisk += entered - events - censored;
      // Shares of plants leave dust behind when all have gone.
      if (Math.abs(atRisk) < 1e-9) atRisk = 0;
      return moment;
    });
}

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

/** Shares of a plant are plants too; beyond these ends sums and squares lose their digits. */
const [FEWEST, MOST] = [1e-9, 1e15];

/** @throws DomainError `survival/not-a-count` unless above 0: from a thousand-millionth of a plant to a million thousand million */
export function refuseUnlessPlants(plants: number): void {
  if (!(plants >= FEWEST && plants <= MOST)) throw new DomainError('survival/not-a-count', 'a number of plants is above 0', { plants });
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
 * @throws DomainError `survival/not-a-count` as `refuseUnlessPlants`
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
    refuseUnlessPlants(plants);
    of(from).entered += plants;
    of(until)[happened ? 'events' : 'censored'] += plants;
  }

  // Added up from the end, where all have left: so the last few plants are known as exactly as they were told.
  let atRisk = 0;
  const moments: Moment[] = [];
  for (const [time, { events, censored, entered }] of [...at].sort(([a], [b]) => b - a)) {
    atRisk = Math.max(0, atRisk - entered) + events + censored;
    moments.push({ time, events, censored, entered, atRisk });
  }
  return moments.reverse();
}

import { DomainError } from '../errors.ts';
import { dayAfter } from './day-after.ts';
import type { Due } from './due.ts';

/** Of trees planted in one season at one site: when they are looked at. */
export type SiteCheckName = 'firstSeason' | 'secondSpring' | 'thirdYear' | 'fifthYear';

export interface SiteCheckDue extends Due {
  readonly kind: 'siteCheck';
  readonly check: SiteCheckName;
}

/** A check up to so many days before its day is that check: a site is visited when the weather and the people allow. */
export const SITE_CHECK_MAY_BE_EARLY_BY = 60;

/** Months after the planting season ends. */
const CHECKS: readonly (readonly [SiteCheckName, number])[] = [['firstSeason', 0], ['secondSpring', 6], ['thirdYear', 24], ['fifthYear', 48]];

/**
 * The check that trees of one planting season at one site wait for: end of the first growing season, spring of year
 * two (what the winter took), years three and five. A common practice of survival surveys, from memory; the
 * programme's season says when a year ends, so the rule holds on both halves of the earth.
 *
 * One check is asked for at a time, the earliest that was not made; a later one covers those before it.
 *
 * @param seasonYear year in which the planting season began: 2025 for 2025/26
 * @param seasonStartsIn month 1..12
 * @param oldestLookOn of the batches that live there, the earliest of their last looks
 * @returns nothing after the last check
 * @throws DomainError `due/not-a-month`
 */
export function siteCheckDue(seasonYear: number, seasonStartsIn: number, oldestLookOn: string): SiteCheckDue | undefined {
  if (!Number.isInteger(seasonStartsIn) || seasonStartsIn < 1 || seasonStartsIn > 12) {
    throw new DomainError('due/not-a-month', 'a season starts in a month from 1 to 12', { seasonStartsIn });
  }
  return siteCheckDays(seasonYear, seasonStartsIn).find(({ dueOn }) => oldestLookOn < dayAfter(dueOn, -SITE_CHECK_MAY_BE_EARLY_BY));
}

/** All four, in their order: the last day of a season, or of the half year after it. */
export function siteCheckDays(seasonYear: number, seasonStartsIn: number): SiteCheckDue[] {
  return CHECKS.map(([check, months]) => {
    const monthsIn = 12 * (seasonYear + 1) + seasonStartsIn - 1 + months;
    const firstDay = `${String(Math.floor(monthsIn / 12)).padStart(4, '0')}-${String((monthsIn % 12) + 1).padStart(2, '0')}-01`;
    return { kind: 'siteCheck', check, dueOn: dayAfter(firstDay, -1) };
  });
}

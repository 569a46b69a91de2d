import { dayNumber, dayOfNumber } from '../ledger/calendar-day.ts';

/**
 * The calendar day so many days later. Calendar days know no hour and no zone.
 *
 * @param day such as 2026-11-25
 * @param days a whole number; negative for earlier
 */
export const dayAfter = (day: string, days: number): string => dayOfNumber(dayNumber(day) + days);

const MILLISECONDS_A_DAY = 86_400_000;

/**
 * The calendar day so many days later. Calendar days know no hour and no zone.
 *
 * @param day such as 2026-11-25
 * @param days a whole number; negative for earlier
 */
export const dayAfter = (day: string, days: number): string =>
  new Date(Date.parse(`${day}T00:00:00Z`) + days * MILLISECONDS_A_DAY).toISOString().slice(0, 10);

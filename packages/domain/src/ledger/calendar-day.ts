const MILLISECONDS_A_DAY = 86_400_000;

/** Days since 1 January 1970 of a `YYYY-MM-DD`; negative before. Calendar days know no hour and no zone. */
export const dayNumber = (day: string): number => Date.parse(`${day}T00:00:00Z`) / MILLISECONDS_A_DAY;

/** The `YYYY-MM-DD` of a day number, which is whole. */
export const dayOfNumber = (number: number): string => new Date(number * MILLISECONDS_A_DAY).toISOString().slice(0, 10);

/** Days from one `YYYY-MM-DD` to another; negative when `to` is earlier. */
export const daysBetween = (from: string, to: string): number => dayNumber(to) - dayNumber(from);

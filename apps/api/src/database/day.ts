/** Prisma tells a day as the midnight of UTC that begins it; everywhere else a day is its text. */
export const dayOf = (date: Date): string => date.toISOString().slice(0, 10);

export const dayOrNull = (date: Date | null): string | null => (date === null ? null : dayOf(date));

export const asDate = (day: string): Date => new Date(`${day}T00:00:00Z`);

export const asDateOrNull = (day: string | null): Date | null => (day === null ? null : asDate(day));

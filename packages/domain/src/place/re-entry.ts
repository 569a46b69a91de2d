/** When something was sprayed, and for how long nobody should go in, as the label says. */
export interface Sprayed {
  readonly observedOn: string;
  /** Minute of that day, 0..1439, when it is known. */
  readonly minute?: number | undefined;
  readonly reentryHours?: number | undefined;
}

export interface Moment {
  readonly day: string;
  readonly minute: number;
}

const MINUTES_A_DAY = 1440;

/**
 * From when on a place may be entered again, by the clock on its wall.
 *
 * Where nobody wrote the time of spraying, the hours run from the end of that day:
 * too long does no harm. A change to or from summer time in between is not looked at.
 *
 * @returns nothing where no hours were told: then only the label knows
 */
export function entryAllowedFrom({ observedOn, minute = MINUTES_A_DAY, reentryHours }: Sprayed): Moment | undefined {
  if (reentryHours === undefined) return undefined;
  const minutes = minute + Math.ceil(reentryHours * 60);
  const day = new Date(Date.parse(`${observedOn}T00:00:00Z`) + Math.floor(minutes / MINUTES_A_DAY) * 86_400_000);
  return { day: day.toISOString().slice(0, 10), minute: minutes % MINUTES_A_DAY };
}

/** Whether one moment lies before another. */
export const isBefore = (one: Moment, other: Moment): boolean => (one.day === other.day ? one.minute < other.minute : one.day < other.day);

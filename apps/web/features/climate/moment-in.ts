/**
 * Minutes that a zone's clock is ahead of UTC at a moment.
 * @param zone such as Europe/London
 */
function aheadOfUtc(zone: string, moment: number): number {
  const shown = new Intl.DateTimeFormat('sv-SE', { timeZone: zone, dateStyle: 'short', timeStyle: 'medium' }).format(moment);
  return (Date.parse(`${shown.replace(' ', 'T')}Z`) - Math.floor(moment / 1000) * 1000) / 60_000;
}

/**
 * The moment at which the clock on the wall shows a time; of two, when clocks were put
 * back in between, the first.
 *
 * @param day such as 2026-11-27
 * @param minute of that day, 0..1439
 * @returns such as 2026-11-27T08:30:00.000Z; nothing for a time that the clock skipped
 */
export function momentIn(zone: string, day: string, minute: number): string | undefined {
  const wall = Date.parse(`${day}T00:00:00Z`) + minute * 60_000;
  // The offset a day before and a day after: one of them holds, and the bigger one comes first.
  const offsets = [aheadOfUtc(zone, wall - 86_400_000), aheadOfUtc(zone, wall + 86_400_000)].toSorted((one, other) => other - one);
  const moment = offsets.map((ahead) => wall - ahead * 60_000).find((candidate) => candidate + aheadOfUtc(zone, candidate) * 60_000 === wall);
  return moment === undefined ? undefined : new Date(moment).toISOString();
}

/** Minute of the day out of a time such as 8:30 or 08.30; nothing for what is no time. */
export function minuteOfTime(typed: string | undefined): number | undefined {
  const [, hour, minute] = /^(\d{1,2})[:.h](\d{2})$/.exec(typed?.trim() ?? '') ?? [];
  if (hour === undefined || Number(hour) > 23 || Number(minute) > 59) return undefined;
  return Number(hour) * 60 + Number(minute);
}

/** Days such as 2026-11-25 in a programme's zone. A day has no time of its own and is never moved between zones. */

const formats = new Map<string, Intl.DateTimeFormat>();

/** Made once for each way of writing: to make one takes a phone longer than to draw a key. */
function formatFor(locale: string, options: Intl.DateTimeFormatOptions): Intl.DateTimeFormat {
  const way = JSON.stringify([locale, options]);
  const format = formats.get(way) ?? new Intl.DateTimeFormat(locale, options);
  formats.set(way, format);
  return format;
}

/** @param zone such as Europe/London */
export function today(zone: string, now: Date = new Date()): string {
  // The Swedish way of writing days is the ISO one.
  return formatFor('sv-SE', { timeZone: zone, year: 'numeric', month: '2-digit', day: '2-digit' }).format(now);
}

/** @param days may be negative */
export function dayAfter(day: string, days = 1): string {
  const moved = new Date(`${day}T00:00:00Z`);
  moved.setUTCDate(moved.getUTCDate() + days);
  return moved.toISOString().slice(0, 10);
}

/** Whole days from one day to another; negative when it is earlier. */
export const daysFrom = (from: string, to: string): number => (Date.parse(`${to}T00:00:00Z`) - Date.parse(`${from}T00:00:00Z`)) / 86_400_000;

/** Minutes since midnight in the zone, 0..1439. */
export function minuteOfDay(zone: string, now: Date = new Date()): number {
  const [hour = '0', minute = '0'] = formatFor('sv-SE', { timeZone: zone, hour: '2-digit', minute: '2-digit' }).format(now).split(':');
  return Number(hour) * 60 + Number(minute);
}

/**
 * A day as people say it, such as "Wednesday 25 November 2026".
 * @param style `long` for headings, `short` for tables: "25 Nov 2026", which is never broken over lines
 */
export function sayDay(day: string, style: 'long' | 'short' = 'short', locale = 'en-GB'): string {
  const weekday = style === 'long' ? ({ weekday: 'long' } as const) : {};
  const said = formatFor(locale, { timeZone: 'UTC', day: 'numeric', month: style, year: 'numeric', ...weekday }).format(new Date(`${day}T00:00:00Z`));
  return style === 'long' ? said : said.replaceAll(' ', '\u00a0');
}

/** A moment in the programme's zone, such as "25 Nov 2026, 14:05". */
export function sayMoment(moment: string, zone: string, locale = 'en-GB'): string {
  return formatFor(locale, { timeZone: zone, day: 'numeric', month: 'short', year: 'numeric', hour: '2-digit', minute: '2-digit' }).format(new Date(moment));
}

/** The twelve months by name, January first. */
export function months(locale = 'en-GB'): string[] {
  const name = formatFor(locale, { timeZone: 'UTC', month: 'long' });
  return Array.from({ length: 12 }, (_, month) => name.format(new Date(Date.UTC(2026, month, 1))));
}

/** A month as a chart writes it, such as "Nov 2026". @param month 0 for January */
export function monthAndYear(year: number, month: number, locale = 'en-GB'): string {
  return formatFor(locale, { timeZone: 'UTC', month: 'short', year: 'numeric' }).format(new Date(Date.UTC(year, month, 1)));
}

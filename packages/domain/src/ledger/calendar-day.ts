const MILLISECONDS_A_DAY = 86_400_000;

/** Days from one `YYYY-MM-DD` to another; negative when `to` is earlier. Calendar days know no hour and no zone. */
export const daysBetween = (from: string, to: string): number => (epoch(to) - epoch(from)) / MILLISECONDS_A_DAY;

const epoch = (day: string): number => Date.parse(`${day}T00:00:00Z`);

import type { ForecastAt } from './forecast.ts';
import { type DatedStay, stockForecast } from './stock-forecast.ts';
import type { Prior } from './varying-chance-fit.ts';

export interface PastForecast extends ForecastAt {
  /** The day number on which it would have been made. */
  readonly madeOn: number;
  /** How many of the plants that were here then stood in pots, or were planted out of them, on the day it was made for. */
  readonly came: number;
}

/** A forecast of fewer plants tests nothing. */
const PLANTS_NEEDED = 20;

/**
 * What would have been forecast then, from what was known then, beside what came of it.
 *
 * Losses count on the day on which they were seen. Entries that came late are taken to have been known on their day.
 *
 * @param stays of the plants asked about, and of the same species' history
 * @param madeOn day numbers on which a forecast is made
 * @param ahead days that each looks ahead; those that reach beyond today are left out
 */
export function pastForecasts(asked: readonly DatedStay[], history: readonly DatedStay[], prior: Prior, today: number, madeOn: readonly number[], ahead: number): PastForecast[] {
  return madeOn.flatMap((then) => {
    const here = asked.filter((stay) => isOpenOn(stay, then)).map(({ to: _, ...stay }) => stay);
    if (then + ahead > today || here.reduce((sum, { plants }) => sum + plants, 0) < PLANTS_NEEDED) return [];
    const [told] = stockForecast(here, history.flatMap((stay) => asKnownOn(stay, then)), prior, then, [ahead]);
    const came = asked.filter((stay) => stay.state === 'potted' && stay.stuckOn <= then && isOpenOn(stay, then + ahead)).reduce((sum, { plants }) => sum + plants, 0);
    return told ? [{ ...told, madeOn: then, came }] : [];
  });
}

const isOpenOn = ({ stuckOn, from, until, to }: DatedStay, day: number): boolean =>
  stuckOn + from <= day && (day < stuckOn + until || (to === undefined && day === stuckOn + until));

function asKnownOn(stay: DatedStay, day: number): DatedStay[] {
  if (stay.stuckOn + stay.from >= day) return [];
  if (stay.stuckOn + stay.until <= day) return [stay];
  const { to: _, ...open } = stay;
  return [{ ...open, until: day - stay.stuckOn }];
}

import type { ForecastAt } from './forecast.ts';
import { stockForecast } from './stock-forecast.ts';
import { type DatedStay, stickingOf } from './stock-spread.ts';
import type { Prior } from './varying-chance-fit.ts';

export interface PastForecast extends ForecastAt {
  /** The day number on which it would have been made. */
  readonly madeOn: number;
  /** How many of the plants that were here then stood in pots, or were planted out of them, on the day it was made for: tree by tree and day of sticking, never more than were here. */
  readonly came: number;
}

/** A forecast of fewer plants tests nothing. */
const PLANTS_NEEDED = 20;

/**
 * What would have been forecast then, from what was known then, beside what came of it.
 *
 * Losses count on the day on which they were seen. Entries that came late are taken to have been known on their day. A day is
 * taken at its end: what went elsewhere on it stands there.
 *
 * @param asked stays of the plants asked about
 * @param history stays of the same species
 * @param madeOn day numbers on which a forecast is made
 * @param ahead days that each looks ahead; those that reach beyond today are left out
 */
export function pastForecasts(asked: readonly DatedStay[], history: readonly DatedStay[], prior: Prior, today: number, madeOn: readonly number[], ahead: number): PastForecast[] {
  return madeOn.filter((then) => then + ahead <= today).flatMap((then) => {
    const here = asked.filter((stay) => isThereOn(stay, then));
    if (plantsIn(here) < PLANTS_NEEDED) return [];
    const inPots = asked.filter((stay) => stay.state === 'potted' && isThereOn(stay, then + ahead));
    return stockForecast(here, history.flatMap((stay) => asKnownOn(stay, then)), prior, then, [ahead]).map((told) => ({ ...told, madeOn: then, came: plantsOf(here, inPots) }));
  });
}

const plantsIn = (stays: readonly DatedStay[]): number => stays.reduce((sum, { plants }) => sum + plants, 0);

const isThereOn = ({ stuckOn, from, until, isOpen }: DatedStay, day: number): boolean => stuckOn + from <= day && (isOpen === true || day < stuckOn + until);

/** How many of these can be those: what was received or found in between is no plant that was here. */
function plantsOf(before: readonly DatedStay[], after: readonly DatedStay[]): number {
  const were = bySticking(before);
  return [...bySticking(after)].reduce((sum, [sticking, plants]) => sum + Math.min(plants, were.get(sticking) ?? 0), 0);
}

function bySticking(stays: readonly DatedStay[]): Map<string, number> {
  const sums = new Map<string, number>();
  for (const stay of stays) sums.set(stickingOf(stay), stay.plants + (sums.get(stickingOf(stay)) ?? 0));
  return sums;
}

function asKnownOn(stay: DatedStay, day: number): DatedStay[] {
  if (stay.stuckOn + stay.from >= day) return [];
  if (stay.stuckOn + stay.until <= day) return [stay];
  const { to: _, ...open } = stay;
  return [{ ...open, until: day - stay.stuckOn }];
}

import { DEFAULT_DAYS } from '../due/waiting-days.ts';
import { normalQuantile } from '../distribution/normal.ts';
import { refuseUnlessConfidence } from '../proportion/outcome.ts';
import { type OnItsWay, type StageStay, WAY } from '../time/stage-stays.ts';
import { stateOccupancy, type Occupancy, type Stay } from '../time/state-occupancy.ts';
import type { ForecastAt } from './forecast.ts';
import { type DatedStay, type Lot, stickingOf, stockSpread } from './stock-spread.ts';
import type { Prior } from './varying-chance-fit.ts';

const WEEK = 7;
/** Parts in which the prior's cuttings go on; days from liner to pot; share that gets there. Working rules, no figures of a paper. */
const PRIOR = { parts: 12, linerDays: 180, linerShare: 0.9, pottedDays: 1_095 };

/**
 * How many of the plants that are here will stand in pots, or be planted out of them, after so many days.
 *
 * Each plant is followed on as plants of the same stage and age went on before: Aalen-Johansen from that age on, the prior's
 * plants among them. What may come otherwise is told in `stockSpread`. Limits are those of a normal distribution of the sum,
 * cut off at 0 and at all plants. What is not stuck yet is not in it, and no bad winter that the past has not seen.
 *
 * @param here stays that are open today
 * @param past stays of the same species, as far as they were known
 * @param today a day number
 * @param ahead days from today
 * @throws DomainError `survival/not-a-level`; as `fitVaryingChance` and `stateOccupancy`
 */
export function stockForecast(here: readonly DatedStay[], past: readonly DatedStay[], prior: Prior, today: number, ahead: readonly number[], confidence = 0.8): ForecastAt[] {
  refuseUnlessConfidence(confidence);
  const history = inWeeks([...past, ...priorStays(prior)]);
  const spreadOf = stockSpread(past, prior);
  const z = normalQuantile((1 + confidence) / 2);
  const curves = new Map<string, readonly Occupancy[]>();
  const curveFrom = (state: StageStay['state'], age: number): readonly Occupancy[] => {
    const key = `${state} ${age}`;
    const known = curves.get(key) ?? occupancyFrom(history, state, age);
    curves.set(key, known);
    return known;
  };
  const all = here.reduce((sum, { plants }) => sum + plants, 0);
  return ahead.map((days) => {
    const lots = here.map(({ state, plants, unit, stuckOn }): Lot => {
      const age = Math.max(0, Math.floor((today - stuckOn) / WEEK));
      const curve = curveFrom(state, age);
      const chance = chanceBetween(curve, state, age, days / WEEK);
      return { plants, unit, sticking: stickingOf({ unit, stuckOn }), chance, inTheEnd: Math.max(chance, chanceAt(curve, state, Number.POSITIVE_INFINITY)) };
    });
    const expected = lots.reduce((sum, { plants, chance }) => sum + plants * chance, 0);
    const width = z * spreadOf(lots);
    return { days, expected, lower: Math.max(0, expected - width), upper: Math.min(all, expected + width) };
  });
}

/** Steps are of whole weeks: what is due in a week of which a part is asked for counts in that part. */
function chanceBetween(curve: readonly Occupancy[], state: OnItsWay, age: number, weeks: number): number {
  const whole = Math.floor(weeks);
  return (1 - (weeks - whole)) * chanceAt(curve, state, age + whole) + (weeks - whole) * chanceAt(curve, state, age + whole + 1);
}

/** Chance to stand in a pot at that age. */
const chanceAt = (curve: readonly Occupancy[], state: OnItsWay, week: number): number => {
  const shares = curve.findLast(({ time }) => time <= week)?.shares;
  return shares ? Math.min(1, Math.max(0, shares[orderFrom(state).indexOf('potted')] ?? 0)) : Number(state === 'potted');
};

const orderFrom = (state: OnItsWay): OnItsWay[] => [state, ...WAY.filter((other) => other !== state)];

/** Everybody who was under watch at that age, as if all began there in that state. */
function occupancyFrom(history: readonly Stay<OnItsWay>[], state: OnItsWay, age: number): readonly Occupancy[] {
  const since = history.flatMap((stay) => (stay.until > age ? [{ ...stay, from: Math.max(stay.from, age) }] : []));
  return since.length === 0 ? [] : stateOccupancy(since, orderFrom(state));
}

/** Stays that say the same are one; each lasts a week at least. */
function inWeeks(stays: readonly StageStay[]): Stay<OnItsWay>[] {
  const sums = new Map<string, Stay<OnItsWay>>();
  for (const { state, from, until, to, plants } of stays) {
    const [begins, ends] = [Math.floor(from / WEEK), Math.max(Math.floor(from / WEEK) + 1, Math.floor(until / WEEK))];
    const key = `${state} ${begins} ${ends} ${to ?? ''}`;
    sums.set(key, { state, from: begins, until: ends, plants: plants + (sums.get(key)?.plants ?? 0), ...(to && { to }) });
  }
  return [...sums.values()];
}

/** The way of the prior's cuttings: on between half a year and a year, into pots half a year later, nine in ten of them. */
function priorStays({ mean, plants }: Prior): StageStay[] {
  const { movingOn, verdict } = DEFAULT_DAYS;
  const stays = Array.from({ length: PRIOR.parts }, (_, at): StageStay[] => {
    const [lifted, each] = [movingOn + ((verdict - movingOn) * at) / (PRIOR.parts - 1), (plants * mean) / PRIOR.parts];
    const potted = lifted + PRIOR.linerDays;
    return [
      { state: 'cutting', from: 0, until: lifted, to: 'liner', plants: each }, { state: 'liner', from: lifted, until: potted, to: 'potted', plants: each * PRIOR.linerShare },
      { state: 'liner', from: lifted, until: potted, to: 'lost', plants: each * (1 - PRIOR.linerShare) }, { state: 'potted', from: potted, until: potted + PRIOR.pottedDays, plants: each * PRIOR.linerShare },
    ];
  }).flat();
  return [...stays, { state: 'cutting' as const, from: 0, until: verdict, to: 'lost' as const, plants: plants * (1 - mean) }].filter((stay) => stay.plants > 0);
}

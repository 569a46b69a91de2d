import { DEFAULT_DAYS } from '../due/waiting-days.ts';
import { normalQuantile } from '../distribution/normal.ts';
import { refuseUnlessConfidence } from '../proportion/outcome.ts';
import { type OnItsWay, type StageStay, WAY } from '../time/stage-stays.ts';
import { stateOccupancy, type Occupancy, type Stay } from '../time/state-occupancy.ts';
import type { ForecastAt } from './forecast.ts';
import { fitVaryingChance, type Prior } from './varying-chance-fit.ts';

/** A stay with its calendar: `stuckOn` is a day number, days of the stay count from it. */
export interface DatedStay extends StageStay {
  readonly stuckOn: number;
  /** The donor tree, or the sticking where nobody knows it. */
  readonly unit: string;
}

const WEEK = 7;
/** Parts in which the prior's cuttings go on; days from liner to pot; share that gets there. Working rules, no figures of a paper. */
const PRIOR = { parts: 12, linerDays: 180, linerShare: 0.9, pottedDays: 1_095 };

/**
 * How many of the plants that are here will stand in pots, or be planted out of them, after so many days.
 *
 * Each plant is followed on as plants of the same stage and age went on before: Aalen-Johansen from that age on, the prior's
 * plants among them. Plants of one tree fare together, trees by themselves; and how plants fare is known only as well as the
 * trees of the past can tell, an error that all plants share. Limits are those of a normal distribution of the sum, cut off
 * at 0 and at all plants. What is not stuck yet is not in it.
 *
 * @param here stays that are open today
 * @param past stays of the same species, as far as they were known
 * @param today a day number
 * @param ahead days from today
 * @throws DomainError `survival/not-a-level`; as `fitVaryingChance` and `stateOccupancy`
 *
 * Source: the weight of a history of clusters by Kish L (1965) Survey Sampling, 8.2; from memory.
 */
export function stockForecast(here: readonly DatedStay[], past: readonly DatedStay[], prior: Prior, today: number, ahead: readonly number[], confidence = 0.8): ForecastAt[] {
  refuseUnlessConfidence(confidence);
  const history = inWeeks([...past, ...priorStays(prior)]);
  const outcomes = outcomesOf(past);
  const { likeness } = fitVaryingChance(outcomes, prior);
  const known = prior.plants + outcomes.reduce((sum, { plants }) => sum + plants / (1 + (plants - 1) * likeness), 0);
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
    const ofUnits = new Map<string, { alone: number; together: number }>();
    let expected = 0;
    for (const { state, plants, unit, stuckOn } of here) {
      const age = Math.max(0, Math.floor((today - stuckOn) / WEEK));
      const chance = chanceAt(curveFrom(state, age), state, age + days / WEEK);
      expected += plants * chance;
      const spread = Math.sqrt(chance * (1 - chance));
      const sum = ofUnits.get(unit) ?? { alone: 0, together: 0 };
      ofUnits.set(unit, { alone: sum.alone + plants * spread * spread, together: sum.together + plants * spread });
    }
    const ofPlants = [...ofUnits.values()].reduce((sum, { alone, together }) => sum + (1 - likeness) * alone + likeness * together * together, 0);
    const ofHistory = [...ofUnits.values()].reduce((sum, { together }) => sum + together, 0) ** 2 / known;
    const width = z * Math.sqrt(ofPlants + ofHistory);
    return { days, expected, lower: Math.max(0, expected - width), upper: Math.min(all, expected + width) };
  });
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

/** Cuttings decided, tree by tree: how much trees differ. */
function outcomesOf(past: readonly DatedStay[]): { successes: number; plants: number }[] {
  const trees = new Map<string, { successes: number; plants: number }>();
  for (const { state, to, plants, unit } of past) {
    if (state !== 'cutting' || to === undefined) continue;
    const tree = trees.get(unit) ?? { successes: 0, plants: 0 };
    trees.set(unit, { successes: tree.successes + (to === 'lost' ? 0 : plants), plants: tree.plants + plants });
  }
  return [...trees.values()];
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

import { isCount } from '../count.ts';
import { normalQuantile } from '../distribution/normal.ts';
import { DomainError } from '../errors.ts';
import { refuseUnlessConfidence } from '../proportion/outcome.ts';
import type { Occupancy } from '../time/state-occupancy.ts';

/** Plants of one donor tree that stand at one stage since one day. */
export interface StandingLot {
  readonly donorId: string;
  readonly plants: number;
  /** Days since they came to this stage. */
  readonly days: number;
}

/** How plants of a stage fared before: cumulative shares by days, from `stateOccupancy` with the stage first and the good end second. */
export interface StageHistory {
  readonly curve: readonly Occupancy[];
  /** How alike plants of one donor tree fare, 0 to below 1. */
  readonly likeness: number;
}

export interface ForecastAt {
  readonly days: number;
  readonly expected: number;
  readonly lower: number;
  readonly upper: number;
}

/**
 * How many of the plants that stand here now will have gone on by given days from today.
 *
 * A lot that has waited already is asked among those that waited as long. Plants of one donor tree fare together, trees by
 * themselves, and the limits are those of a normal distribution of the sum, cut off at 0 and at all plants. Nothing that is
 * not stuck yet is in it, and no bad winter that the past has not seen.
 *
 * @param lots whole numbers of plants
 * @param ahead days from today, each 0 or more
 * @param confidence of the limits, between 0 and 1
 * @throws DomainError `survival/not-a-level`; `survival/not-a-count` for plants; `survival/not-a-time` for days that are no finite number
 *   of 0 or more; `numbers/not-a-share` for a likeness outside 0 to 1
 */
export function forecast(lots: readonly StandingLot[], history: StageHistory, ahead: readonly number[], confidence = 0.8): ForecastAt[] {
  refuseUnlessConfidence(confidence);
  refuseUnlessStanding(lots, history.likeness, ahead);
  const z = normalQuantile((1 + confidence) / 2);
  const all = lots.reduce((sum, { plants }) => sum + plants, 0);
  return ahead.map((days) => {
    const expected = lots.reduce((sum, lot) => sum + lot.plants * chanceWithin(history.curve, lot.days, days), 0);
    const spread = z * Math.sqrt(varianceOf(lots, history, days));
    return { days, expected, lower: Math.max(0, expected - spread), upper: Math.min(all, expected + spread) };
  });
}

function refuseUnlessStanding(lots: readonly StandingLot[], likeness: number, ahead: readonly number[]): void {
  for (const { plants } of lots) if (!isCount(plants)) throw new DomainError('survival/not-a-count', 'plants are a whole number', { plants });
  for (const days of [...ahead, ...lots.map((lot) => lot.days)]) if (!(days >= 0 && days < Number.POSITIVE_INFINITY)) throw new DomainError('survival/not-a-time', 'days are 0 or more', { days });
  if (!(likeness >= 0 && likeness < 1)) throw new DomainError('numbers/not-a-share', 'a likeness lies from 0 to below 1', { likeness });
}

function varianceOf(lots: readonly StandingLot[], { curve, likeness }: StageHistory, days: number): number {
  const ofDonors = new Map<string, { independent: number; together: number }>();
  for (const { donorId, plants, days: waited } of lots) {
    const chance = chanceWithin(curve, waited, days);
    const sum = ofDonors.get(donorId) ?? { independent: 0, together: 0 };
    const spread = Math.sqrt(chance * (1 - chance));
    ofDonors.set(donorId, { independent: sum.independent + plants * spread * spread, together: sum.together + plants * spread });
  }
  // n p q within a tree for what is its own, and all of them at once for what they share.
  return [...ofDonors.values()].reduce((sum, { independent, together }) => sum + (1 - likeness) * independent + likeness * together * together, 0);
}

/** Chance to have gone on within so many days, of one that has waited and is still here. */
function chanceWithin(curve: readonly Occupancy[], waited: number, days: number): number {
  const [then, later] = [at(curve, waited), at(curve, waited + days)];
  return then.here <= 0 ? 0 : Math.min(1, Math.max(0, (later.gone - then.gone) / then.here));
}

function at(curve: readonly Occupancy[], days: number): { here: number; gone: number } {
  const step = curve.findLast(({ time }) => time <= days);
  return { here: step?.shares[0] ?? 1, gone: step?.shares[1] ?? 0 };
}

export interface Calibration {
  /** Share of past forecasts whose limits held what came. */
  readonly covered: number;
  /** Sum of what came over sum of what was expected: 1 is right, below it forecasts promised too much. Missing when nothing was expected. */
  readonly ratio?: number;
  readonly forecasts: number;
}

/**
 * How past forecasts did: a range of 80 % should have held four in five.
 *
 * @throws DomainError `numbers/not-a-size` for a number below 0, or none
 */
export function calibrationOf(past: readonly (Omit<ForecastAt, 'days'> & { readonly came: number })[]): Calibration {
  for (const { expected, lower, upper, came } of past) {
    if (![expected, lower, upper, came].every((n) => n >= 0 && n < Number.POSITIVE_INFINITY)) throw new DomainError('numbers/not-a-size', 'plants expected and come are 0 or more', { expected, lower, upper, came });
  }
  const expected = past.reduce((sum, one) => sum + one.expected, 0);
  const came = past.reduce((sum, one) => sum + one.came, 0);
  const held = past.filter(({ lower, upper, came: seen }) => seen >= lower && seen <= upper).length;
  return { covered: past.length === 0 ? 0 : held / past.length, ...(expected > 0 ? { ratio: came / expected } : {}), forecasts: past.length };
}

import type { DonorOutcome } from '../survival/donor-ratio-interval.ts';
import type { StageStay } from '../time/stage-stays.ts';
import { fitVaryingChance, type Prior } from './varying-chance-fit.ts';

/** A stay with its calendar: `stuckOn` is a day number, days of the stay count from it. */
export interface DatedStay extends StageStay {
  readonly stuckOn: number;
  /** The donor tree, or the sticking where nobody knows it. */
  readonly unit: string;
}

/** Plants that are here, with their chance to be in a pot on the day asked about, and ever. */
export interface Lot {
  readonly plants: number;
  readonly unit: string;
  readonly sticking: string;
  readonly chance: number;
  /** At least `chance`. */
  readonly inTheEnd: number;
}

/** What was stuck of one tree on one day. */
export const stickingOf = ({ unit, stuckOn }: Pick<DatedStay, 'unit' | 'stuckOn'>): string => `${unit} ${stuckOn}`;

/** How alike plants of one sticking are in when they move on, until five stickings have told. A working rule. */
const TIMING = { mean: 0.5, likeness: 0.3 };

/**
 * By how much what comes may differ from what is expected, as a standard deviation in plants.
 *
 * Two things are uncertain of a plant: whether it comes to a pot at all, and when. Plants of one donor tree are alike in the first,
 * plants of one sticking in the second, since a tray is lifted and potted in few goes. Both are known only as well as the past
 * has told. What is expected was drawn from trees of the past, and where these have plants here, what sets a tree apart is in
 * both: the less of it is left to be wrong about.
 *
 * @param past stays of the same species, as far as they were known
 * @param prior counts as plants of which each came or not by itself; when they come is one rule, that holds for all or for none
 * @throws DomainError as `fitVaryingChance`
 *
 * Source: worked out here, of chances that vary between clusters and are exchangeable: the error is a sum over clusters of what is here
 * less what the past had of it, as in the prediction of a total (Valliant R, Dorfman AH, Royall RM (2000) Finite Population Sampling, 9; from memory).
 */
export function stockSpread(past: readonly DatedStay[], prior: Prior): (lots: readonly Lot[]) => number {
  const [trees, stickings] = [treesDecided(past), stickingsMoved(past)];
  const whether = fitVaryingChance([...trees.values()], prior).likeness;
  const when = fitVaryingChance(stickings, { ...TIMING, plants: prior.plants }).likeness;
  const [toldByTree, toldBySticking] = [plantsOf(trees), moversOf(past)];
  return (lots) => {
    const parts = lots.map((lot) => ({ ...lot, byThen: lot.inTheEnd > 0 ? lot.chance / lot.inTheEnd : 0 }));
    // Add up to chance x (1 - chance): whether, in the part that is due by then; when, in the part that comes; both at once.
    const ofWhether = parts.map(({ unit, plants, byThen, inTheEnd }): Share => ({ of: unit, plants, variance: byThen ** 2 * inTheEnd * (1 - inTheEnd) }));
    const ofWhen = parts.map(({ sticking, plants, byThen, inTheEnd }): Share => ({ of: sticking, plants, variance: inTheEnd ** 2 * byThen * (1 - byThen) }));
    const ofBoth = parts.map(({ sticking, plants, byThen, inTheEnd }): Share => ({ of: sticking, plants, variance: inTheEnd * (1 - inTheEnd) * byThen * (1 - byThen) }));
    return Math.sqrt(
      varianceOf(ofWhether, whether, toldByTree, prior.plants) + varianceOf(ofWhen, when, toldBySticking, prior.plants, prior.plants) + varianceOf(ofBoth, whether * when, new Map(), Number.POSITIVE_INFINITY),
    );
  };
}

interface Share {
  /** The tree or the sticking. */
  readonly of: string;
  readonly plants: number;
  /** Of one plant. */
  readonly variance: number;
}

/** Of the sum over these plants less what was expected from `told`, plants of the past by tree or sticking, and a prior beside them, `alike` of which err as one. */
function varianceOf(shares: readonly Share[], likeness: number, told: ReadonlyMap<string, number>, prior: number, alike = 1): number {
  const here = new Map<string, number>();
  for (const { of, plants, variance } of shares) here.set(of, (here.get(of) ?? 0) + plants * Math.sqrt(variance));
  const [all, past] = [sumOf(here.values()), sumOf(told.values())];
  const weight = past + prior;
  const together = sumOf([...new Set([...here.keys(), ...told.keys()])].map((of) => ((here.get(of) ?? 0) - (all * (told.get(of) ?? 0)) / weight) ** 2));
  const alone = sumOf(shares.map(({ plants, variance }) => plants * variance));
  const ofPast = prior === Number.POSITIVE_INFINITY ? 0 : (((1 - likeness) * past + prior * alike) * (all / weight) ** 2);
  return (1 - likeness) * alone + likeness * together + ofPast;
}

const sumOf = (values: Iterable<number>): number => [...values].reduce((sum, value) => sum + value, 0);

/** Cuttings decided, tree by tree: how much trees differ. */
function treesDecided(past: readonly DatedStay[]): Map<string, DonorOutcome> {
  const trees = new Map<string, DonorOutcome>();
  for (const { state, to, plants, unit } of past) if (state === 'cutting' && to !== undefined) add(trees, unit, plants, to !== 'lost');
  return trees;
}

const plantsOf = (outcomes: ReadonlyMap<string, DonorOutcome>): Map<string, number> => new Map([...outcomes].map(([of, { plants }]) => [of, plants]));

const isMover = ({ state, to }: DatedStay): boolean => state !== 'potted' && to !== undefined && to !== 'lost';

/** Cuttings that moved on, by sticking. */
function moversOf(past: readonly DatedStay[]): Map<string, number> {
  const movers = new Map<string, number>();
  for (const stay of past) if (isMover(stay) && stay.state === 'cutting') movers.set(stickingOf(stay), (movers.get(stickingOf(stay)) ?? 0) + stay.plants);
  return movers;
}

/** Of each sticking, at each stage, how many had moved on at the age at which half of all had. */
function stickingsMoved(past: readonly DatedStay[]): DonorOutcome[] {
  return (['cutting', 'liner'] as const).flatMap((stage) => {
    const movers = past.filter((stay) => stay.state === stage && isMover(stay)).sort((a, b) => a.until - b.until);
    const half = sumOf(movers.map(({ plants }) => plants)) / 2;
    let upTo = 0;
    const middle = movers.find(({ plants }) => (upTo += plants) >= half)?.until ?? 0;
    const stickings = new Map<string, DonorOutcome>();
    for (const stay of movers) add(stickings, stickingOf(stay), stay.plants, stay.until <= middle);
    return [...stickings.values()];
  });
}

function add(outcomes: Map<string, DonorOutcome>, of: string, plants: number, isSuccess: boolean): void {
  const known = outcomes.get(of) ?? { successes: 0, plants: 0 };
  outcomes.set(of, { successes: known.successes + (isSuccess ? plants : 0), plants: known.plants + plants });
}

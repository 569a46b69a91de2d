import { isCount } from '../count.ts';
import { DomainError } from '../errors.ts';
import { donorSpread } from './donor-spread.ts';
import type { DonorOutcome } from './donor-ratio-interval.ts';
import type { Interval } from './interval.ts';
import { wilsonInterval } from './wilson-interval.ts';

/** Trees of one donor planted in one plot, as the books hold them on a day. Whole numbers. */
export interface PlantedTrees {
  readonly plotId: string;
  /** Clone group or donor tree; left out where it is not known. */
  readonly donorId?: string | undefined;
  readonly planted: number;
  /** Seen dead, or missed twice running. */
  readonly dead: number;
  /** Taken out alive and given away: no verdict on them. */
  readonly givenOut: number;
  /** The last look at them; left out while nobody has looked. `alive`: seen alive then. */
  readonly look?: { readonly alive: number; readonly notFound: number } | undefined;
}

export interface PlantedSurvival {
  readonly planted: number;
  readonly givenOut: number;
  /** Trees of batches that nobody has looked at since they were planted. In no rate. */
  readonly notChecked: number;
  /** Trees of checked batches that the last look left out. In no rate. */
  readonly notLooked: number;
  readonly alive: number;
  readonly dead: number;
  readonly notFound: number;
  /** Shares of those looked at: trees not found counted as dead, and left out. Not there while nobody looked. */
  readonly rates?: { readonly low: number; readonly high?: number; readonly wilsonLow: Interval; readonly wilsonHigh?: Interval } | undefined;
  /** Interval of the low rate with plots as the things sampled; by donor trees where plots are too few or all alike. */
  readonly byUnit?: (Interval & { readonly unit: 'plot' | 'donor'; readonly units: number }) | undefined;
}

/**
 * Share of planted trees found alive, with both answers to "and those not found?".
 *
 * Sums over plots, never averages of their percentages. Trees of one plot, and copies of one donor
 * tree, live or die together, so beside Wilson's interval stands one with plots (else donor trees)
 * as sampling units; trust the wider one.
 *
 * @param trees whole numbers, 0 <= dead + givenOut <= planted, looked at no more than are left
 * @throws DomainError `survival/not-a-count` for negative or broken counts, or more trees than were planted
 *
 * Source: alive / (alive + dead + not found) and the two rates are common practice of regeneration surveys;
 * Wilson EB (1927) J. Am. Stat. Assoc. 22:209-212; ratio estimator as in `donorRatioInterval`.
 */
export function plantedSurvival(trees: readonly PlantedTrees[]): PlantedSurvival {
  for (const one of trees) refuseUnlessCounted(one);
  const checked = trees.flatMap(({ look, ...one }) => (look ? [{ ...one, ...look }] : []));
  const planted = sumOf(trees, ({ planted: n }) => n);
  const [alive, dead, notFound] = [sumOf(checked, (one) => one.alive), sumOf(checked, (one) => one.dead), sumOf(checked, (one) => one.notFound)];
  const notChecked = sumOf(trees.filter(({ look }) => !look), (one) => one.planted - one.givenOut);
  const givenOut = sumOf(trees, (one) => one.givenOut);
  const counts = { planted, givenOut, notChecked, notLooked: planted - givenOut - notChecked - alive - dead - notFound, alive, dead, notFound };
  const looked = alive + dead + notFound;
  if (looked === 0) return counts;

  const decided = alive + dead;
  return {
    ...counts,
    rates: {
      low: alive / looked, wilsonLow: wilsonInterval(alive, looked),
      // Where none that were looked for were found, leaving them out leaves no answer.
      ...(decided > 0 && { high: alive / decided, wilsonHigh: wilsonInterval(alive, decided) }),
    },
    byUnit: spread(checked, 'plot', ({ plotId }) => plotId) ?? spread(checked, 'donor', ({ donorId }) => donorId),
  };
}

type Checked = Omit<PlantedTrees, 'look'> & { readonly alive: number; readonly notFound: number };

/** Nothing below five units, or where all are alike, or where a tree's unit is not known. */
function spread(checked: readonly Checked[], unit: 'plot' | 'donor', unitOf: (one: Checked) => string | undefined): PlantedSurvival['byUnit'] {
  const outcomes = new Map<string, DonorOutcome>();
  for (const one of checked) {
    const id = unitOf(one);
    if (id === undefined) return undefined;
    const { successes, plants } = outcomes.get(id) ?? { successes: 0, plants: 0 };
    outcomes.set(id, { successes: successes + one.alive, plants: plants + one.alive + one.dead + one.notFound });
  }
  const found = donorSpread(outcomes);
  return found?.kind === 'interval' ? { unit, units: found.donors, lower: found.lower, upper: found.upper } : undefined;
}

const sumOf = <T>(list: readonly T[], n: (one: T) => number): number => list.reduce((sum, one) => sum + n(one), 0);

function refuseUnlessCounted({ planted, dead, givenOut, look }: PlantedTrees): void {
  const seen = look ? look.alive + look.notFound : 0;
  const counts = [planted, dead, givenOut, look?.alive ?? 0, look?.notFound ?? 0];
  if (!counts.every(isCount) || dead + givenOut + seen > planted) {
    throw new DomainError('survival/not-a-count', 'all must be whole numbers, and no more than were planted', { planted, dead, givenOut, seen });
  }
}

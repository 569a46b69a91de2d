import { isCount } from '../count.ts';
import { DomainError } from '../errors.ts';
import { evenShares } from './even-shares.ts';
import { fewestStops } from './fewest-stops.ts';

/** Plants of one batch that may be taken. */
export interface Supply {
  readonly batchId: string;
  /** The donor tree, or the group of trees that count as one clone. */
  readonly donor: string;
  /** Whole plants, 0 or more, that nobody else is promised. */
  readonly free: number;
  /** The place where it stands. */
  readonly stop: string;
}

export interface Wish {
  /** Whole plants, at least 1. */
  readonly plants: number;
  /** Whole plants of one donor tree, at least 1; left out: no limit. */
  readonly mostPerDonor?: number | undefined;
}

export interface Pick {
  /** What to take from which batch, in walking order; at least 1 each. */
  readonly lines: readonly { readonly batchId: string; readonly n: number }[];
  /** Whole plants. */
  readonly plants: number;
  /** Whole plants that are wanted and not there, or only of donor trees that have given their most. */
  readonly short: number;
  readonly donors: number;
  readonly stops: number;
  /** Whether no walk with fewer stops would do; else it is only known that no stop can be left out. */
  readonly isShortestProven: boolean;
}

/**
 * Which plants to take for a request: as many as are wanted, from as many donor trees as
 * can be, as evenly as can be, with the fewest stops.
 *
 * The aims hold in that order, so a longer walk is never spared at the cost of a donor
 * tree. Of several trees that could give an odd plant, the one with most left gives it.
 * The same supplies, in whatever order they come, give the same pick.
 *
 * @param supplies of one species and stage
 * @param walk the stops in walking order; each stop of a supply must be in it
 * @throws DomainError `request/not-a-count` for negative or broken numbers, nothing wanted, or a limit below 1
 */
export function pickPlants({ plants, mostPerDonor }: Wish, supplies: readonly Supply[], walk: readonly string[]): Pick {
  if (mostPerDonor !== undefined && (!isCount(mostPerDonor) || mostPerDonor === 0)) {
    throw new DomainError('request/not-a-count', 'the most per donor tree is a whole number, at least 1', { mostPerDonor });
  }
  const order = new Map(walk.map((stop, at) => [stop, at]));
  const there = supplies.filter(({ free }) => free !== 0).sort(onTheWalk(order));
  const donors = donorsOf(there);
  const mostOf = (donor: Donor): number => Math.min(donor.free, mostPerDonor ?? donor.free);
  const { level, extra, total } = evenShares(plants, donors.map(mostOf));

  const owed = (donor: Donor, stops: ReadonlySet<string>): number => Math.min(mostOf(donor), freeAt(donor, stops));
  const canGiveMore = (donor: Donor, stops: ReadonlySet<string>): boolean => owed(donor, stops) > level;
  const suffices = (stops: ReadonlySet<string>): boolean =>
    donors.every((donor) => owed(donor, stops) >= Math.min(mostOf(donor), level)) && donors.filter((donor) => canGiveMore(donor, stops)).length >= extra;
  const { stops, isProven } = fewestStops(walk.filter((stop) => there.some((supply) => supply.stop === stop)), suffices);

  const chosen = new Set(stops);
  const givesMore = new Set(donors.filter((donor) => canGiveMore(donor, chosen)).sort(mostLeftFirst).slice(0, extra));
  const taken = new Map(donors.flatMap((donor) => take(donor, Math.min(mostOf(donor), level) + (givesMore.has(donor) ? 1 : 0), chosen)));
  return {
    lines: there.flatMap(({ batchId }) => (taken.has(batchId) ? [{ batchId, n: taken.get(batchId) ?? 0 }] : [])),
    plants: total,
    short: plants - total,
    donors: donors.filter((donor) => donor.supplies.some(({ batchId }) => taken.has(batchId))).length,
    stops: stops.length,
    isShortestProven: isProven,
  };
}

interface Donor {
  readonly donor: string;
  readonly free: number;
  readonly supplies: readonly Supply[];
}

function donorsOf(supplies: readonly Supply[]): Donor[] {
  const byDonor = new Map<string, Supply[]>();
  for (const supply of supplies) byDonor.set(supply.donor, [...(byDonor.get(supply.donor) ?? []), supply]);
  return [...byDonor].map(([donor, own]) => ({ donor, supplies: own, free: own.reduce((sum, { free }) => sum + free, 0) }));
}

const freeAt = ({ supplies }: Donor, stops: ReadonlySet<string>): number =>
  supplies.reduce((sum, { stop, free }) => sum + (stops.has(stop) ? free : 0), 0);

/** From the fullest batch first, so that few labels have to be found. */
function take({ supplies }: Donor, n: number, stops: ReadonlySet<string>): [string, number][] {
  const lines: [string, number][] = [];
  let left = n;
  for (const { batchId, free } of supplies.filter(({ stop }) => stops.has(stop)).sort((one, other) => other.free - one.free)) {
    if (left === 0) break;
    lines.push([batchId, Math.min(free, left)]);
    left -= Math.min(free, left);
  }
  return lines;
}

const onTheWalk = (order: ReadonlyMap<string, number>) => (one: Supply, other: Supply): number =>
  (order.get(one.stop) ?? 0) - (order.get(other.stop) ?? 0) || (one.batchId < other.batchId ? -1 : 1);

const mostLeftFirst = (one: Donor, other: Donor): number => other.free - one.free || (one.donor < other.donor ? -1 : 1);

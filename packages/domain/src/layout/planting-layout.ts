import { isCount } from '../count.ts';
import { DomainError } from '../errors.ts';
import type { Dice } from '../random/dice.ts';
import { mendByExchange, placedGreedily } from './exchange.ts';
import { latticeStarts } from './lattice-starts.ts';
import { nearestCopies, type NearestCopies } from './nearest-copies.ts';
import { DUST, neighboursWithin } from './neighbours.ts';
import { packingBound } from './packing-bound.ts';
import { between, type Position } from './position.ts';

export interface PlantingLayout {
  /** The donor tree at each position, in the order of the positions. */
  readonly donors: readonly string[];
  /** How near the two nearest copies of one tree stand; infinite where no tree has two. */
  readonly nearest: number;
  /** So many pairs of copies stand that near. */
  readonly pairs: number;
  /** No layout can keep all copies farther apart than this. */
  readonly bound: number;
}

/**
 * Where to plant what, so that copies of one donor tree stand apart.
 *
 * First the distance to the nearest copy is made as large as can be, then pairs so near as few as can be. On rows and columns each donor
 * begins with a coarser lattice of its own, the widest that there is; what does not come out even is mended by exchange. From there, and on
 * positions that lie anyhow, larger and larger distances are tried, until several in a row fail. The bound is proved, the layout is not:
 * the gap between the two says how good it is.
 *
 * @param plants of each donor tree, whole numbers; together as many as there are positions
 * @param positions square, offset (`gridOf`) or any other list; finite numbers
 * @param dice the same seed gives the same layout
 * @throws DomainError `survival/not-a-count`; `layout/not-as-many` unless plants and positions are equally many; `numbers/not-a-size` for
 *   positions that are no finite numbers
 *
 * Source of the rule: seed orchards keep copies of a clone at least 27 m apart, Hatcher AV, Weir RJ (1981) Southern Forest
 * Tree Improvement Conference.
 */
export function plantingLayout(plants: ReadonlyMap<string, number>, positions: readonly Position[], dice: Dice): PlantingLayout {
  const [names, counts] = [[...plants.keys()], [...plants.values()]];
  refuseUnfit(counts, positions);
  const bound = packingBound(counts.reduce((most, n) => Math.max(most, n), 0), positions);
  // From one side to the other, so that each plant is placed beside those that stand already.
  const order = [...positions.keys()].sort((one, other) => positions[one]!.x - positions[other]!.x || positions[one]!.y - positions[other]!.y);
  const sorted = order.map((at) => positions[at]!);
  const search = new Search(counts, sorted, bound, dice);
  if (bound < Number.POSITIVE_INFINITY) {
    for (const { donors, nearest } of latticeStarts(counts, sorted)) if (nearest > search.best.nearest + DUST) search.settle([...donors], nearest);
    search.climb();
  }
  const { donors, nearest, pairs } = search.best;
  const byPosition: string[] = [];
  for (const [next, at] of order.entries()) byPosition[at] = names[donors[next]!]!;
  return { donors: byPosition, nearest, pairs, bound };
}

function refuseUnfit(counts: readonly number[], positions: readonly Position[]): void {
  if (!counts.every(isCount)) throw new DomainError('survival/not-a-count', 'plants are whole numbers');
  const all = counts.reduce((sum, n) => sum + n, 0);
  if (all !== positions.length) throw new DomainError('layout/not-as-many', 'plants and positions are not equally many', { plants: all, positions: positions.length });
  if (!positions.every(({ x, y }) => Number.isFinite(x) && Number.isFinite(y))) throw new DomainError('numbers/not-a-size', 'a position is two finite numbers');
}

/** Tries that may fail in a row: many where a try costs nothing. */
const PATIENCE = { few: 12, many: 2 };
const MANY = 400;
const STEPS_DOWN = 8;

/** Keeps the best layout found so far. */
class Search {
  best: NearestCopies & { readonly donors: readonly number[] };

  constructor(private readonly counts: readonly number[], private readonly positions: readonly Position[], private readonly bound: number, private readonly dice: Dice) {
    const donors = counts.flatMap((n, donor) => Array.from({ length: n }, () => donor));
    this.best = { donors, ...nearestCopies(donors, positions) };
  }

  /** Puts right what stands nearer to a copy than a distance, as far as can be. @returns whether this is better than all before */
  mend(donors: number[], distance: number, near = neighboursWithin(this.positions, distance)): boolean {
    mendByExchange(donors, this.counts.length, near, this.dice);
    const made = { donors: [...donors], ...nearestCopies(donors, this.positions) };
    const isBetter = made.nearest > this.best.nearest + DUST || (made.nearest > this.best.nearest - DUST && made.pairs < this.best.pairs);
    if (isBetter) this.best = made;
    return isBetter;
  }

  /** Mends at a distance, and if that cannot be, at smaller ones until all is well or worse than what was found before. */
  settle(donors: number[], distance: number): void {
    const smaller = distancesUpTo(distance, this.positions).slice(-STEPS_DOWN).reverse();
    for (const wanted of [distance, ...smaller]) {
      if (wanted <= this.best.nearest + DUST) return;
      this.mend(donors, wanted);
      if (this.best.nearest >= wanted - DUST) return;
    }
  }

  /** Larger and larger distances, the next each time from the best that there is. */
  climb(): void {
    let patience = this.positions.length > MANY ? PATIENCE.many : PATIENCE.few;
    for (const distance of distancesUpTo(this.bound, this.positions)) {
      if (patience === 0) return;
      if (distance <= this.best.nearest + DUST) continue;
      const near = neighboursWithin(this.positions, distance);
      if (!this.mend(placedGreedily(this.counts, near, this.dice), distance, near)) patience -= 1;
    }
  }
}

/** Distances to try, smallest first: those that occur on a grid, elsewhere steps of four per cent. */
function distancesUpTo(bound: number, positions: readonly Position[]): number[] {
  const middle = positions[positions.length >> 1]!;
  // From a corner and from the middle: on a grid these are all there are.
  const seen = [positions[0]!, middle].flatMap((from) => positions.map((to) => between(from, to))).filter((distance) => distance > DUST && distance <= bound + DUST);
  const sorted = seen.sort((a, b) => a - b);
  const own = sorted.filter((distance, at) => at === 0 || distance - sorted[at - 1]! > 1e-6 * bound);
  if (own.length <= GRID_HAS) return own;
  return Array.from({ length: 30 }, (_, at) => bound * 0.96 ** (29 - at));
}

/** More different distances than this within the bound are no grid's. */
const GRID_HAS = 80;

import { isCount } from '../count.ts';
import { DomainError } from '../errors.ts';
import { type Dice, shuffled } from '../random/dice.ts';
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

/** Exchanges tried for each plant that stands too near a copy. */
const TRIES = 200;
const ROUNDS = 3;

/**
 * Where to plant what, so that copies of one donor tree stand apart.
 *
 * First the distance to the nearest copy is made as large as can be, then pairs so near as few as can be. Distances are tried from
 * the bound downwards: donors are put where none of their copies is nearer, and what is left over is mended by exchange. The first
 * distance that works out is taken. The bound is proved, the layout is not: the gap between the two says how good it is.
 *
 * @param plants of each donor tree, whole numbers; together as many as there are positions
 * @param positions square, offset (`gridOf`) or any other list
 * @param dice the same seed gives the same layout
 * @throws DomainError `survival/not-a-count`; `layout/not-as-many` unless plants and positions are equally many
 *
 * Source of the rule: seed orchards keep copies of a clone at least 27 m apart, Hatcher AV, Weir RJ (1981) Southern Forest
 * Tree Improvement Conference.
 */
export function plantingLayout(plants: ReadonlyMap<string, number>, positions: readonly Position[], dice: Dice): PlantingLayout {
  const counts = [...plants.values()];
  if (!counts.every(isCount)) throw new DomainError('survival/not-a-count', 'plants are whole numbers');
  const all = counts.reduce((sum, n) => sum + n, 0);
  if (all !== positions.length) throw new DomainError('layout/not-as-many', 'plants and positions are not equally many', { plants: all, positions: positions.length });

  const bound = packingBound(Math.max(0, ...counts), positions);
  let best: PlantingLayout | undefined;
  for (const distance of distancesUpTo(bound, positions)) {
    const donors = laidOut(plants, positions, distance, dice);
    const made = { donors, ...nearestOf(donors, positions, distance), bound };
    if (!best || made.nearest > best.nearest + DUST || (made.nearest > best.nearest - DUST && made.pairs < best.pairs)) best = made;
    if (best.nearest > distance - DUST) break;
  }
  return best ?? { donors: [...plants.keys()].flatMap((donor) => Array.from({ length: plants.get(donor) ?? 0 }, () => donor)), nearest: Number.POSITIVE_INFINITY, pairs: 0, bound };
}

/** Distances that occur between positions, the largest that the bound allows first. */
function distancesUpTo(bound: number, positions: readonly Position[]): number[] {
  const [first, ...others] = positions;
  if (!first || bound === Number.POSITIVE_INFINITY) return [];
  // From a corner and from the middle: on a grid these are all there are, elsewhere enough to choose from.
  const middle = positions[positions.length >> 1] ?? first;
  const seen = [...others.map((other) => between(first, other)), ...positions.map((other) => between(middle, other))].filter((distance) => distance > DUST && distance <= bound + DUST);
  const sorted = seen.sort((a, b) => b - a);
  return sorted.filter((distance, at) => at === 0 || sorted[at - 1]! - distance > 1e-6 * bound).slice(0, 40);
}

/** The nearest two copies of one tree, and how many pairs are as near; none nearer than `upTo` are looked for beyond it. */
function nearestOf(donors: readonly string[], positions: readonly Position[], upTo: number): Pick<PlantingLayout, 'nearest' | 'pairs'> {
  let [nearest, pairs] = [upTo, 0];
  for (const [at, near] of neighboursWithin(positions, upTo).entries()) {
    for (const other of near) {
      if (other < at || donors[other] !== donors[at]) continue;
      const distance = between(positions[at]!, positions[other]!);
      if (distance < nearest - DUST) [nearest, pairs] = [distance, 1];
      else if (distance < nearest + DUST) pairs += 1;
    }
  }
  return { nearest, pairs };
}

function laidOut(plants: ReadonlyMap<string, number>, positions: readonly Position[], distance: number, dice: Dice): string[] {
  const near = neighboursWithin(positions, distance);
  const names = [...plants.keys()];
  const donors = placedGreedily([...plants.values()], near, dice);
  mendByExchange(donors, names.length, near, dice);
  return donors.map((donor) => names[donor]!);
}

/** Position by position, the donor with most plants left of those that have no copy near. Donors by their number. */
function placedGreedily(counts: readonly number[], near: readonly (readonly number[])[], dice: Dice): number[] {
  const left = [...counts];
  const order = shuffled([...counts.keys()], dice);
  const donors: number[] = [];
  for (const around of near) {
    const taken = new Set(around.map((other) => donors[other]));
    let chosen: number | undefined;
    for (const donor of order) {
      if (left[donor] === 0) continue;
      const isFree = !taken.has(donor);
      if (chosen === undefined || (isFree && taken.has(chosen)) || (isFree === !taken.has(chosen) && left[donor]! > left[chosen]!)) chosen = donor;
    }
    donors.push(chosen!);
    left[chosen!]! -= 1;
  }
  return donors;
}

/** Plants that stand too near a copy change places with others, as long as not more do so afterwards. */
function mendByExchange(donors: number[], kinds: number, near: readonly (readonly number[])[], dice: Dice): void {
  const copies = new CopiesNear(donors, kinds, near);
  for (let round = 0; round < ROUNDS; round += 1) {
    const wrong = donors.flatMap((donor, at) => (copies.of(at, donor) > 0 ? [at] : []));
    if (wrong.length === 0) return;
    for (const at of shuffled(wrong, dice)) {
      for (let tries = 0; tries < TRIES && copies.of(at, donors[at]!) > 0; tries += 1) copies.exchangeUnlessWorse(at, Math.floor(dice() * donors.length));
    }
  }
}

/** For each position and donor, how many of its copies stand near: so an exchange is weighed without looking around. */
class CopiesNear {
  readonly #counts: Int32Array;

  constructor(private readonly donors: number[], private readonly kinds: number, private readonly near: readonly (readonly number[])[]) {
    this.#counts = new Int32Array(donors.length * kinds);
    for (const [at, donor] of donors.entries()) this.#add(at, donor, 1);
  }

  of(at: number, donor: number): number {
    return this.#counts[at * this.kinds + donor]!;
  }

  exchangeUnlessWorse(one: number, other: number): void {
    const [here, there] = [this.donors[one]!, this.donors[other]!];
    if (here === there) return;
    const before = this.of(one, here) + this.of(other, there);
    // Where the two are neighbours, each counts the other's donor, who is about to leave.
    const after = this.of(one, there) + this.of(other, here) - (this.near[one]!.includes(other) ? 2 : 0);
    if (after > before) return;
    [this.donors[one], this.donors[other]] = [there, here];
    for (const [at, lost, won] of [[one, here, there], [other, there, here]] as const) {
      this.#add(at, lost, -1);
      this.#add(at, won, 1);
    }
  }

  #add(at: number, donor: number, n: 1 | -1): void {
    for (const around of this.near[at]!) this.#counts[around * this.kinds + donor]! += n;
  }
}

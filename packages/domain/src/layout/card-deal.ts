import { isCount } from '../count.ts';
import { DomainError } from '../errors.ts';
import { type Dice, shuffled } from '../random/dice.ts';

export interface Crate {
  /** Donor trees in it, one plant of each at most. */
  readonly donors: readonly string[];
}

export interface CardDeal {
  readonly crates: readonly Crate[];
  /**
   * Donor trees that two crates in a row have in common, at most. Within a patch no copies meet, however it is mixed; across
   * the border of two patches those of these trees can, so the closest that copies come is one planting distance.
   */
  readonly mostShared: number;
  /** From a crate with a copy of some donor tree to the next one with another, at least: 1 is the very next. Infinite where no tree has two. */
  readonly cratesApart: number;
}

/**
 * Crates for planting with no map: each holds at most one plant of each donor tree, and is planted as one patch in any order.
 *
 * Any volunteer may mix a crate and no two copies come to stand beside each other within it. Planted in the order given, patch by patch,
 * crates that share donor trees lie as far apart as can be.
 *
 * @param plants of each donor tree, whole numbers
 * @param size plants that a crate can carry, at least 1
 * @param dice decide which donors come together
 * @returns as few crates as can be: neither more than the largest donor's plants ask for, nor than room does
 * @throws DomainError `survival/not-a-count`, `survival/no-plants`
 */
export function cardDeal(plants: ReadonlyMap<string, number>, size: number, dice: Dice): CardDeal {
  const counts = [...plants.values()];
  if (!counts.every(isCount) || !isCount(size) || size === 0) throw new DomainError('survival/not-a-count', 'plants are whole numbers, and a crate carries one at least', { size });
  const all = counts.reduce((sum, n) => sum + n, 0);
  if (all === 0) throw new DomainError('survival/no-plants', 'there is nothing to deal');

  const most = counts.reduce((a, b) => Math.max(a, b), 0);
  const crates = Math.max(Math.ceil(all / size), most);
  const dealt: string[][] = Array.from({ length: crates }, () => []);
  // Like cards: all plants of a donor one after the other, on and on around the table. As a donor has no more plants than there
  // are crates, none gets two, and crates differ by one plant at most.
  let next = 0;
  for (const [donor, n] of shuffled([...plants], dice)) {
    for (let plant = 0; plant < n; plant += 1) {
      dealt[next % crates]?.push(donor);
      next += 1;
    }
  }
  const order = spread(dealt.map((donors) => ({ donors: shuffled(donors, dice) })), most, Math.floor(dice() * crates));
  return { crates: order, mostShared: sharedSideBySide(order), cratesApart: fewestApart(order) };
}

/**
 * A donor's plants lie in crates dealt one after the other. Taken in strides around the table, these come apart: the stride is chosen that
 * keeps the plants of the largest donor farthest from each other.
 */
function spread(dealt: readonly Crate[], most: number, first: number): Crate[] {
  const n = dealt.length;
  let best = { stride: 1, apart: 0 };
  for (let stride = 1; stride <= n / 2 && best.apart < n / most; stride += 1) {
    if (commonFactor(stride, n) > 1) continue;
    let apart = n;
    for (let plant = 1; plant < most && apart > best.apart; plant += 1) apart = Math.min(apart, (plant * stride) % n, n - ((plant * stride) % n));
    if (apart > best.apart) best = { stride, apart };
  }
  const order: Crate[] = [];
  for (const [at, crate] of dealt.entries()) order[(first + at * best.stride) % n] = crate;
  return order;
}

const commonFactor = (a: number, b: number): number => (b === 0 ? a : commonFactor(b, a % b));

function fewestApart(crates: readonly Crate[]): number {
  const lastAt = new Map<string, number>();
  let fewest = Number.POSITIVE_INFINITY;
  for (const [at, { donors }] of crates.entries()) {
    for (const donor of donors) {
      fewest = Math.min(fewest, at - (lastAt.get(donor) ?? Number.NEGATIVE_INFINITY));
      lastAt.set(donor, at);
    }
  }
  return fewest;
}

function sharedSideBySide(crates: readonly Crate[]): number {
  return crates.reduce((most, { donors }, at) => Math.max(most, donors.filter((donor) => crates[at + 1]?.donors.includes(donor)).length), 0);
}

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
}

/**
 * Crates for planting with no map: each holds at most one plant of each donor tree, and is planted as one patch in any order.
 *
 * Any volunteer may mix a crate and no two copies come to stand beside each other within it.
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

  const crates = Math.max(Math.ceil(all / size), ...counts);
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
  const order = shuffled(dealt.map((donors) => ({ donors: shuffled(donors, dice) })), dice);
  return { crates: order, mostShared: sharedSideBySide(order) };
}

function sharedSideBySide(crates: readonly Crate[]): number {
  return crates.reduce((most, { donors }, at) => Math.max(most, donors.filter((donor) => crates[at + 1]?.donors.includes(donor)).length), 0);
}

import { type Dice, shuffled } from '../random/dice.ts';

/** Exchanges tried for each plant that stands too near a copy. */
const TRIES = 200;
const ROUNDS = 3;

/** Position by position, the donor with most plants left of those that have no copy near. Donors by their number. */
export function placedGreedily(counts: readonly number[], near: readonly (readonly number[])[], dice: Dice): number[] {
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
export function mendByExchange(donors: number[], kinds: number, near: readonly (readonly number[])[], dice: Dice): void {
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

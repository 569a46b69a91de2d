/** The next number of a sequence, at least 0 and below 1. */
export type Dice = () => number;

/**
 * Dice that fall the same way for the same seed, on every machine: a plan can be had again.
 *
 * Good enough for layouts and simulations, never for secrets.
 *
 * @param seed any whole number; only its lower 32 bits count
 *
 * Source: sfc32 of Doty-Humphrey C, PractRand (public domain); from memory.
 */
export function diceOf(seed: number): Dice {
  let [a, b, c, counter] = [0x9e3779b9, seed | 0, 0x243f6a88, 1];
  const next: Dice = () => {
    const sum = (((a + b) | 0) + counter) | 0;
    counter = (counter + 1) | 0;
    a = b ^ (b >>> 9);
    b = (c + (c << 3)) | 0;
    c = ((c << 21) | (c >>> 11)) + sum | 0;
    return (sum >>> 0) / 4_294_967_296;
  };
  for (let warm = 0; warm < 15; warm += 1) next();
  return next;
}

/** The same things in an order by chance (Fisher-Yates). */
export function shuffled<T>(things: readonly T[], dice: Dice): T[] {
  const order = [...things];
  for (let at = order.length - 1; at > 0; at -= 1) {
    const other = Math.floor(dice() * (at + 1));
    [order[at], order[other]] = [order[other] as T, order[at] as T];
  }
  return order;
}

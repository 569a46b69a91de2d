/**
 * What Stirling's formula lacks: ln(z!) - [z ln z - z + ln(2 pi z) / 2].
 *
 * Kept apart because it is small: the large parts of factorials cancel in a probability, and
 * subtracting them as numbers of twenty digits would leave only noise for counts of 10^9.
 *
 * @param z above 0, need not be whole
 * @returns about 1/(12 z); absolute error below 1e-15
 *
 * Source: Loader C (2000) Fast and accurate computation of binomial probabilities; series
 * of Abramowitz & Stegun 1964, 6.1.41; from memory.
 */
export function stirlingError(z: number): number {
  // The series is good from 15 on; below, step up to it: s(z) = s(z + 1) + (z + 1/2) ln(1 + 1/z) - 1.
  let steps = 0;
  let at = z;
  while (at < 15) {
    steps += (at + 0.5) * Math.log1p(1 / at) - 1;
    at += 1;
  }
  const square = at * at;
  const series = 1 / 12 - (1 / 360 - (1 / 1260 - (1 / 1680 - (1 / 1188 - 691 / 360360 / square) / square) / square) / square) / square;
  return steps + series / at;
}

/**
 * x ln(x / m) + m - x: how far a count lies from its mean, without the cancellation that
 * the formula as written suffers where the two are close.
 *
 * @param x at least 0
 * @param mean above 0
 * @returns at least 0
 *
 * Source: Loader C (2000) Fast and accurate computation of binomial probabilities (his bd0); from memory.
 */
export function deviancePart(x: number, mean: number): number {
  if (x === 0) return mean;
  const gap = x - mean;
  if (Math.abs(gap) >= 0.1 * (x + mean)) return x * Math.log(x / mean) - gap;

  // Twice the series of the inverse hyperbolic tangent of v, less what is linear.
  const v = gap / (x + mean);
  let sum = gap * v;
  let term = 2 * x * v;
  for (let odd = 3; ; odd += 2) {
    term *= v * v;
    const next = sum + term / odd;
    if (next === sum) return next;
    sum = next;
  }
}

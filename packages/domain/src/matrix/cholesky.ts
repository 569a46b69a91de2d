/** A symmetric matrix in rows. */
export type Matrix = readonly (readonly number[])[];

/**
 * Solves A x = b for a symmetric, positive definite A.
 *
 * @returns x, or undefined where A is not positive definite (to 12 digits): some direction is without information
 */
export function solved(a: Matrix, b: readonly number[]): number[] | undefined {
  const lower = choleskyOf(a);
  if (!lower) return undefined;
  const n = b.length;
  const x = [...b];
  for (let i = 0; i < n; i += 1) {
    for (let k = 0; k < i; k += 1) x[i]! -= lower[i]![k]! * x[k]!;
    x[i]! /= lower[i]![i]!;
  }
  for (let i = n - 1; i >= 0; i -= 1) {
    for (let k = i + 1; k < n; k += 1) x[i]! -= lower[k]![i]! * x[k]!;
    x[i]! /= lower[i]![i]!;
  }
  return x;
}

/** Inverse of a symmetric, positive definite matrix, or undefined as `solved`. */
export function inverseOf(a: Matrix): number[][] | undefined {
  const columns = a.map((_, at) => solved(a, a.map((_row, row) => (row === at ? 1 : 0))));
  return columns.every((column) => column !== undefined) ? columns : undefined;
}

/** Whether A is positive definite beside a matrix that it is a part of: what is dust in the whole is nothing in the part. */
export const isDefiniteWithin = (a: Matrix, whole: Matrix): boolean => choleskyOf(a, whole) !== undefined;

/** Lower triangle L with L L' = A. */
function choleskyOf(a: Matrix, whole: Matrix = a): number[][] | undefined {
  const lower: number[][] = [];
  for (const [i, row] of a.entries()) {
    const made: number[] = [];
    for (let j = 0; j <= i; j += 1) {
      let rest = row[j]!;
      for (let k = 0; k < j; k += 1) rest -= made[k]! * (j === i ? made[k]! : lower[j]![k]!);
      if (j < i) made.push(rest / lower[j]![j]!);
      else if (!(rest > 1e-12 * Math.abs(whole[i]![i]!))) return undefined;
      else made.push(Math.sqrt(rest));
    }
    lower.push(made);
  }
  return lower;
}

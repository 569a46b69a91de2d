import { studentTTail } from './student-t-tail.ts';

/**
 * The point that Student's t exceeds with a chance, `qt(chance, freedom, lower.tail = FALSE)` in R.
 *
 * By halving the tail itself, so that small chances and many degrees of freedom keep their digits.
 *
 * @param chance above 0, at most 1/2
 * @param freedom degrees of freedom, above 0
 * @returns at least 0; infinite beyond 1e150, where squares run out
 */
export function studentTBeyond(chance: number, freedom: number): number {
  let [below, above] = [0, 1];
  while (studentTTail(above, freedom) > chance) {
    if (above > 1e150) return Number.POSITIVE_INFINITY;
    [below, above] = [above, above * 2];
  }
  for (;;) {
    const middle = (below + above) / 2;
    if (!(middle > below && middle < above)) return middle;
    if (studentTTail(middle, freedom) > chance) below = middle;
    else above = middle;
  }
}

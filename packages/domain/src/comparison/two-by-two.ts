import { isCount } from '../count.ts';
import { DomainError } from '../errors.ts';

/** Two groups of plants, and how many of each did it (rooted) or did not. */
export interface TwoByTwo {
  readonly first: { readonly yes: number; readonly no: number };
  readonly second: { readonly yes: number; readonly no: number };
}

/** @throws DomainError `survival/not-a-count` */
export function refuseUnlessCounts({ first, second }: TwoByTwo): void {
  const counts = { a: first.yes, b: first.no, c: second.yes, d: second.no };
  if (!Object.values(counts).every(isCount)) throw new DomainError('survival/not-a-count', 'all four must be whole numbers of plants', counts);
}

/** Whether both groups are there and both ends were seen: else there is nothing to compare. */
export const tells = ({ first, second }: TwoByTwo): boolean =>
  first.yes + first.no > 0 && second.yes + second.no > 0 && first.yes + second.yes > 0 && first.no + second.no > 0;

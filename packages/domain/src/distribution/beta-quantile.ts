import { DomainError } from '../errors.ts';
import { betaShare } from './beta-share.ts';

/**
 * The point of the beta distribution below which a share lies.
 *
 * Found by halving, on the side that is nearer to 0 so that tiny points keep their digits:
 * slower than Newton's way and cannot run astray.
 *
 * @param share 0 <= share <= 1
 * @param a first shape, above 0
 * @param b second shape, above 0
 * @returns 0 to 1
 * @throws DomainError as `betaShare`
 */
export function betaQuantile(share: number, a: number, b: number): number {
  if (!(share >= 0 && share <= 1)) throw new DomainError('numbers/not-a-share', 'a share lies between 0 and 1', { share });
  const half = betaShare(0.5, a, b);
  if (share > half) return 1 - halved((x) => 1 - betaShare(x, b, a) > share);
  return halved((x) => betaShare(x, a, b) < share);
}

/** The point in 0 to 1/2 up to which `isBelow` holds. */
function halved(isBelow: (x: number) => boolean): number {
  let below = 0;
  let above = 0.5;
  for (;;) {
    const middle = (below + above) / 2;
    if (!(middle > below && middle < above)) return middle;
    if (isBelow(middle)) below = middle;
    else above = middle;
  }
}

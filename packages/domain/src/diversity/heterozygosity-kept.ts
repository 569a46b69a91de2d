import { isCount } from '../count.ts';
import { DomainError } from '../errors.ts';

/**
 * Share of the stand's expected heterozygosity that is kept after some generations.
 *
 * With one generation and the number of unrelated donor trees it says what their copies hold today. Not for a number of
 * copies: `effectiveSize` is about breeding trees.
 *
 * @param effectiveSize breeding trees, at least 1/2
 * @param generations a whole number
 * @returns 0 to 1
 * @throws DomainError `diversity/not-a-size` when effectiveSize is not a finite number of at least 1/2; `diversity/not-a-count` for generations
 *
 * Source: (1 - 1 / (2 Ne))^t, Crow JF, Kimura M (1970) An Introduction to Population Genetics Theory; from memory.
 */
export function heterozygosityKept(effectiveSize: number, generations = 1): number {
  if (!(effectiveSize >= 0.5 && effectiveSize < Number.POSITIVE_INFINITY)) throw new DomainError('diversity/not-a-size', 'a size is a finite number of at least 1/2', { effectiveSize });
  if (!isCount(generations)) throw new DomainError('diversity/not-a-count', 'generations are a whole number', { generations });
  // Of half a tree nothing is left, but today all of it is.
  return generations === 0 ? 1 : Math.exp(generations * Math.log1p(-1 / (2 * effectiveSize)));
}

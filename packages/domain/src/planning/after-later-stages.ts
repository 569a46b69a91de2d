import { refuseUnlessVarying, type VaryingChance } from '../distribution/beta-binomial.ts';
import { DomainError } from '../errors.ts';

/**
 * The chance to reach the end of several stages, when only the first differs from tree to tree.
 *
 * What is kept of the likeness follows from the covariance: two plants of a tree both arrive if both root, and each comes
 * through by itself. So with rooting p of likeness r, and s for all that follows: likeness = s r (1 - p) / (1 - s p).
 *
 * @param rooting chance and likeness at the first stage
 * @param shares of the stages after it, each 0 to 1
 * @throws DomainError `numbers/not-a-share`
 */
export function afterLaterStages(rooting: VaryingChance, shares: readonly number[]): VaryingChance {
  refuseUnlessVarying(rooting);
  const odd = shares.find((share) => !(share >= 0 && share <= 1));
  if (odd !== undefined) throw new DomainError('numbers/not-a-share', 'a rate lies between 0 and 1', { rate: odd });
  const kept = shares.reduce((product, share) => product * share, 1);
  const mean = rooting.mean * kept;
  return { mean, likeness: mean >= 1 ? 0 : (kept * rooting.likeness * (1 - rooting.mean)) / (1 - mean) };
}

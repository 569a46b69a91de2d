import { betaShare } from '../distribution/beta-share.ts';
import { logBinomialMass } from '../distribution/binomial-mass.ts';
import type { Interval } from '../survival/interval.ts';
import { refuseUnlessConfidence, refuseUnlessOf } from './outcome.ts';

/**
 * Mid-P interval on a share: as Clopper-Pearson, but what was seen counts half on either side,
 * so that it covers the truth about as often as it says instead of more.
 *
 * @param successes plants that did it; a whole number, 0 <= successes <= plants
 * @param plants plants looked at; a whole number, at least 1
 * @param confidence two-sided, between 0 and 1, both excluded
 * @throws DomainError `survival/not-a-count`, `survival/no-plants`, `survival/not-a-level`
 *
 * Source: Lancaster HO (1961) J. Am. Stat. Assoc. 56:223-234; compared by Newcombe RG (1998)
 * Stat. Med. 17:857-872, method 6; from memory.
 */
export function midPInterval(successes: number, plants: number, confidence = 0.95): Interval {
  refuseUnlessOf(successes, plants);
  refuseUnlessConfidence(confidence);
  const outside = (1 - confidence) / 2;
  return {
    lower: successes === 0 ? 0 : rising((p) => midPAtLeast(successes, plants, p) > outside),
    upper: successes === plants ? 1 : 1 - rising((q) => midPAtLeast(plants - successes, plants, q) > outside),
  };
}

/** Chance of more than `seen` of `plants`, and half of just as many. Rises with p. */
function midPAtLeast(seen: number, plants: number, p: number): number {
  return betaShare(p, seen, plants - seen + 1) - Math.exp(logBinomialMass(seen, plants, p)) / 2;
}

/** Where a rising answer turns to yes, in 0 to 1. */
function rising(isReached: (p: number) => boolean): number {
  let below = 0;
  let above = 1;
  for (;;) {
    const middle = (below + above) / 2;
    if (!(middle > below && middle < above)) return middle;
    if (isReached(middle)) above = middle;
    else below = middle;
  }
}

import type { ComparedGroup, ComparedPair } from '@sprigline/contract';

/** What is said first of a pair, and the numbers in it; plants of a hundred. */
export type PairWords =
  | { readonly says: 'more' | 'fewer'; readonly n: string; readonly least: string; readonly most: string }
  | { readonly says: 'unsure'; readonly fewer: string; readonly more: string }
  | { readonly says: 'byLuck'; readonly n: string; readonly way: 'more' | 'fewer' }
  | { readonly says: 'allAlike'; readonly what: 'rooted' | 'lost' | 'mixed' }
  | { readonly says: 'tooEarly'; readonly which: 'first' | 'second' | 'both'; readonly day: string | null }
  | { readonly says: 'mixedUp' | 'unknownTree' | 'notToldApart' };

/** Whole plants of a hundred, and one decimal below one: a difference is never told as none. */
export function of100(share: number): string {
  const plants = Math.abs(share) * 100;
  return plants > 0 && plants < 0.95 ? Math.max(0.1, plants).toFixed(1) : String(Math.round(plants));
}

/** The one sentence that a volunteer takes home. */
export function pairWords({ state, found, mixedUpWith }: ComparedPair, first: ComparedGroup, second: ComparedGroup): PairWords {
  if (state === 'too-early') return tooEarly(first, second);
  if (state === 'mixed-up') return { says: mixedUpWith.length > 0 ? 'mixedUp' : 'unknownTree' };
  if (state === 'not-told-apart') return { says: 'notToldApart' };
  if (state === 'all-alike' || !found) return { says: 'allAlike', what: first.lost + second.lost === 0 ? 'rooted' : first.rooted + second.rooted === 0 ? 'lost' : 'mixed' };

  const { difference, lower, upper, isTold } = found;
  const way = difference > 0 ? 'more' : 'fewer';
  if (isTold) {
    const [least, most] = [lower, upper].map(Math.abs).sort((a, b) => a - b);
    return { says: way, n: of100(difference), least: of100(least ?? 0), most: of100(most ?? 0) };
  }
  if (lower > 0 || upper < 0) return { says: 'byLuck', n: of100(difference), way };
  return { says: 'unsure', fewer: of100(lower), more: of100(upper) };
}

function tooEarly(first: ComparedGroup, second: ComparedGroup): PairWords {
  const early = [first, second].filter(({ isRankable }) => !isRankable);
  const which = early.length > 1 ? 'both' : early[0] === second ? 'second' : 'first';
  return { says: 'tooEarly', which, day: early.flatMap(({ verdictOn }) => verdictOn ?? []).sort().at(-1) ?? null };
}

/** Odds as people say a factor: 2.8 times, 0.36 times, 14 times. */
export const times = (odds: number): string => (odds >= 10 ? String(Math.round(odds)) : odds >= 1 ? odds.toFixed(1) : odds.toFixed(2));

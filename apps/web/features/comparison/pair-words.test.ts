import type { ComparedGroup, ComparedPair } from '@sprigline/contract';
import { describe, expect, test } from 'vitest';
import { of100, pairWords, times } from './pair-words.ts';

const group = (more: Partial<ComparedGroup> = {}): ComparedGroup => ({
  key: 'a', name: 'a', hormone: null, firstStuckOn: null, lastStuckOn: null, cuttings: 20, rooted: 10, lost: 10, undecided: 0, leftWithoutVerdict: 0, donors: 2, trays: 2, days: 1, ofUnknownDonor: 0,
  share: 0.5, range: null, needsRange: false, isRankable: true, wilson: null, byDonor: null, donorsDiffer: null, verdictOn: null, ...more,
});
const found = (difference: number, lower: number, upper: number, isTold = true): ComparedPair => ({
  first: 'a', second: 'b', state: 'compared', mixedUpWith: [], unknown: [], advice: [],
  found: { by: 'within-trees', difference, lower, upper, limitsBy: 'donors', odds: null, chance: 0.01, chanceOfAll: 0.01, donors: 6, isTold },
});
const not = (state: ComparedPair['state'], more: Partial<ComparedPair> = {}): ComparedPair => ({ ...found(0, 0, 0), state, found: null, ...more });
const say = (pair: ComparedPair, first = group(), second = group({ key: 'b' })) => pairWords(pair, first, second);

describe('what is said of a pair', () => {
  test('that differs: how many more, as few as, as many as', () => expect(say(found(0.14, 0.03, 0.25))).toEqual({ says: 'more', n: '14', least: '3', most: '25' }));
  test('that differs the other way round, the smaller number first', () => expect(say(found(-0.14, -0.25, -0.03))).toEqual({ says: 'fewer', n: '14', least: '3', most: '25' }));
  test('whose limits lie on both sides of none: no difference yet', () => expect(say(found(0.04, -0.06, 0.14, false))).toEqual({ says: 'unsure', fewer: '6', more: '14' }));
  test('that is one of many', () => expect(say(found(-0.14, -0.25, -0.03, false))).toEqual({ says: 'byLuck', n: '14', way: 'fewer' }));
  test('of which all rooted, or none', () => {
    expect(say(not('all-alike'), group({ lost: 0 }), group({ lost: 0 }))).toEqual({ says: 'allAlike', what: 'rooted' });
    expect(say(not('all-alike'), group({ rooted: 0 }), group({ rooted: 0 }))).toEqual({ says: 'allAlike', what: 'lost' });
  });
  test('that is not decided: which of them, and until when', () => {
    const waiting = group({ isRankable: false, verdictOn: '2027-04-14' });
    expect(say(not('too-early'), waiting)).toEqual({ says: 'tooEarly', which: 'first', day: '2027-04-14' });
    expect(say(not('too-early'), group(), waiting)).toMatchObject({ which: 'second' });
    expect(say(not('too-early'), waiting, group({ isRankable: false, verdictOn: '2027-05-01' }))).toEqual({ says: 'tooEarly', which: 'both', day: '2027-05-01' });
  });
  test('that is mixed up, or of which the tree is not known', () => {
    expect(say(not('mixed-up', { mixedUpWith: ['donor'] }))).toEqual({ says: 'mixedUp' });
    expect(say(not('mixed-up', { unknown: ['donor'] }))).toEqual({ says: 'unknownTree' });
    expect(say(not('not-told-apart'))).toEqual({ says: 'notToldApart' });
  });
});

test.each([[0.136, '14'], [-0.03, '3'], [0.004, '0.4'], [0.0001, '0.1'], [0, '0'], [0.0099, '1']])('%d of one is %s of a hundred', (share, words) => expect(of100(share)).toBe(words));
test.each([[2.771, '2.8'], [0.361, '0.36'], [13.6, '14']])('odds of %d are said as %s times', (odds, words) => expect(times(odds)).toBe(words));

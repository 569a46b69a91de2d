import { describe, expect, test } from 'vitest';
import type { FollowedCuttings } from '../time/cutting-history.ts';
import { leaveOrCall } from './leave-or-call.ts';
import { rootingHistory } from './rooting-history.ts';

const PRIOR = { mean: 0.5, plants: 20, firstRootsDays: 42 };
const own = (end: FollowedCuttings['end'], by: number, plants: number): FollowedCuttings => ({ from: 0, unrootedAt: 0, aliveAt: end === 'waiting' ? by : 0, by, end, plants });

describe('a history with a prior', () => {
  test('is the prior where nothing is known: half of twenty, none before day 42, all by a year', () => {
    const history = rootingHistory([], PRIOR);
    expect(history[0]).toMatchObject({ time: 42, shares: [expect.closeTo(1 - 0.5 / 12, 9), expect.closeTo(0.5 / 12, 9), 0] });
    expect(history.at(-1)).toMatchObject({ time: 371, shares: [expect.closeTo(0.5, 9), expect.closeTo(0.5, 9), 0] });
    expect(leaveOrCall(10, 0, history)).toMatchObject({ chance: expect.closeTo(0.5, 9), nothingBefore: 42 });
  });

  test('worked by hand: eighty of its own that all root in week 20 outweigh it', () => {
    // By week 20 the prior has rooted on days 42, 71, 101, 130: four twelfths of ten; the eighty and those are 83 1/3 of 100.
    const history = rootingHistory([own('rooted', 140, 80)], PRIOR);
    expect(history.findLast(({ time }) => time <= 140)?.shares[1]).toBeCloseTo((80 + 40 / 12) / 100, 9);
  });

  test('a species of which none is held to root, or all are, has such a history', () => {
    expect(rootingHistory([], { ...PRIOR, mean: 0 })).toEqual([]);
    expect(rootingHistory([], { ...PRIOR, mean: 1 }).at(-1)?.shares).toEqual([expect.closeTo(0, 9), expect.closeTo(1, 9), 0]);
  });

  test('roots that are held to come later than a year all come within a day of it', () => {
    const history = rootingHistory([], { ...PRIOR, firstRootsDays: 420 });
    expect(history.map(({ time, shares: [, rooted] }) => [time, rooted])).toEqual([[420, expect.closeTo(0.5 / 12, 9)], [427, expect.closeTo(0.5, 9)]]);
  });

  test.each([[{ mean: 1.2 }, 'numbers/not-a-share'], [{ mean: -0.2 }, 'numbers/not-a-share'], [{ plants: 0 }, 'numbers/not-a-size'], [{ plants: Infinity }, 'numbers/not-a-size']])('%j is refused', (odd, code) => {
    expect(() => rootingHistory([], { ...PRIOR, ...odd })).toThrow(expect.objectContaining({ code }));
  });
});

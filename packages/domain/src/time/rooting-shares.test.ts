import { describe, expect, test } from 'vitest';
import type { CuttingEnd, FollowedCuttings } from './cutting-history.ts';
import { methodFor, occupancyOf, onDaysSeen, rootingShares, rootingTimes, staysOf } from './rooting-shares.ts';

const of = (end: CuttingEnd, unrootedAt: number, by: number, plants: number, more: Partial<FollowedCuttings> = {}): FollowedCuttings =>
  ({ end, from: 0, unrootedAt, aliveAt: end === 'rooted' || end === 'lost' ? unrootedAt : by, by, plants, ...more });

describe('shares rooted and lost', () => {
  test('rows of one last look are told apart by how and when they ended', () => {
    // All five that rooted may have done so by week 10, where two did.
    const { shares } = rootingShares([of('rooted', 0, 70, 2), of('rooted', 0, 140, 3), of('lost', 0, 70, 1)], 'intervals');
    expect(shares).toEqual([{ since: 0, week: 10, rooted: expect.closeTo(5 / 6, 6), lost: expect.closeTo(1 / 6, 6) }]);
  });

  test('who was last seen alive at the start says nothing of who is lost', () => {
    const { shares } = rootingShares([of('lost', 0, 70, 4), of('waiting', 0, 140, 6), of('waiting', 0, 0, 10)], 'intervals');
    expect(shares).toEqual([{ since: 10, week: 10, rooted: 0, lost: expect.closeTo(0.4, 4) }]);
  });

  test('on the days seen, those lost are one end and those called are none', () => {
    const rows = [of('rooted', 0, 70, 3), of('lost', 0, 70, 2), of('called', 140, 140, 5), of('waiting', 0, 0, 7)];
    expect(rootingShares(rows, 'days-seen')).toEqual({ isConverged: true, shares: [{ since: 10, week: 10, rooted: expect.closeTo(0.3, 12), lost: expect.closeTo(0.2, 12) }] });
  });

  test('one in twenty that came late is few, more are not', () => {
    const late = (plants: number) => methodFor([of('waiting', 0, 70, 95), of('waiting', 35, 70, plants, { from: 35 })]);
    expect([late(5), late(5.1)]).toEqual(['intervals', 'days-seen']);
  });
});

test('who was never followed is in no stay, no curve and no test', () => {
  const unseen = [of('waiting', 0, 0, 5), of('waiting', 70, 70, 5, { from: 70 })];
  expect([staysOf(unseen), occupancyOf(unseen), onDaysSeen(unseen), rootingTimes(unseen)]).toEqual([[], [], [], []]);
  expect(rootingTimes([...unseen, of('rooted', 0, 8, 2), of('lost', 0, 8, 3), of('called', 14, 14, 4)])).toEqual([
    { from: 0, until: 2, plants: 2, happened: true }, { from: 0, until: 2, plants: 3, happened: false }, { from: 0, until: 2, plants: 4, happened: false },
  ]);
});

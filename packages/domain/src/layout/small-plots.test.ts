import { describe, expect, test } from 'vitest';
import { diceOf } from '../random/dice.ts';
import { nearestCopies } from './nearest-copies.ts';
import { plantingLayout } from './planting-layout.ts';
import { between, gridOf, type Position } from './position.ts';

/** Every way to plant so many of each, the plainest way. */
function allWays(counts: readonly number[]): number[][] {
  if (counts.every((n) => n === 0)) return [[]];
  return counts.flatMap((n, donor) => (n === 0 ? [] : allWays(counts.map((left, at) => (at === donor ? left - 1 : left))).map((rest) => [donor, ...rest])));
}

function bestOf(counts: readonly number[], positions: readonly Position[]): { nearest: number; pairs: number } {
  const found = allWays(counts).map((donors) => nearestCopies(donors, positions));
  const nearest = Math.max(...found.map((one) => one.nearest));
  return { nearest, pairs: Math.min(...found.filter((one) => one.nearest > nearest - 1e-9).map(({ pairs }) => pairs)) };
}

const ODD: readonly Position[] = [[0, 0], [2.1, 0.4], [0.7, 1.9], [3.3, 2.2], [1.4, 3.6], [4.9, 0.8], [4.2, 4.1], [0.3, 4.4]].map(([x, y]) => ({ x: x!, y: y! }));

const planted = (counts: readonly number[], positions: readonly Position[]) => plantingLayout(new Map(counts.map((n, at) => [`${at}`, n])), positions, diceOf(6));

describe('beside trying all ways', () => {
  test.each([
    ['three rows of two, two trees', [3, 3], gridOf(3, 2)], ['three rows of two, three trees', [2, 2, 2], gridOf(3, 2)],
    ['two rows of four, two trees of which one has more', [5, 3], gridOf(2, 4)], ['two rows of four, four trees', [2, 2, 2, 2], gridOf(2, 4)],
    ['three rows of three, three trees', [3, 3, 3], gridOf(3, 3)], ['offset rows, three trees', [3, 3, 3], gridOf(3, 3, 1, true)],
    ['a single row', [3, 2, 2], gridOf(1, 7)], ['a plot far from nought', [2, 2, 2], gridOf(3, 2).map(({ x, y }) => ({ x: x - 40, y: y - 90 }))],
  ] as const)('%s: copies as far apart as can be, in as few pairs', (_, counts, positions) => {
    const wanted = bestOf(counts, positions);
    const { donors, nearest, pairs } = planted(counts, positions);
    expect({ nearest, pairs }).toEqual({ nearest: expect.closeTo(wanted.nearest, 9), pairs: wanted.pairs });
    const own = donors.flatMap((donor, a) => donors.flatMap((other, b) => (a < b && donor === other ? [between(positions[a]!, positions[b]!)] : [])));
    expect(Math.min(...own)).toBeCloseTo(nearest, 9);
  });

  test.each([
    ['three rows of three, four trees', [3, 2, 2, 2], gridOf(3, 3, 2.5)], ['offset rows, four trees', [3, 2, 2, 2], gridOf(3, 3, 1, true)],
    ['a row with one tree that has most of it', [4, 1, 2], gridOf(1, 7)],
  ] as const)('%s: as far apart as can be, if in some pairs more', (_, counts, positions) => expect(planted(counts, positions).nearest).toBeCloseTo(bestOf(counts, positions).nearest, 9));

  test.each([['two trees', [4, 4]], ['three trees', [3, 3, 2]]] as const)('places that lie anyhow, %s: five sixths of it at least, in whatever order they are told', (_, counts) => {
    for (const positions of [ODD, [...ODD].reverse()]) expect(planted(counts, positions).nearest).toBeGreaterThan((5 / 6) * bestOf(counts, ODD).nearest);
  });
});

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { nearestCopies } from './nearest-copies.ts';
import { neighboursWithin } from './neighbours.ts';
import { packingBound } from './packing-bound.ts';
import { between, gridOf, type Position } from './position.ts';

const spots = fc.array(fc.record({ x: fc.integer({ min: -9, max: 9 }), y: fc.integer({ min: -9, max: 9 }) }), { minLength: 1, maxLength: 25 });

describe('who stands near whom', () => {
  test('is found as by looking at every pair, also on both sides of nothing', () => {
    fc.assert(fc.property(spots, fc.double({ min: 0.5, max: 8, noNaN: true }), (positions, distance) => {
      const wanted = positions.map((one, at) => [...positions.keys()].filter((other) => other !== at && between(one, positions[other]!) < distance - 1e-9));
      expect(neighboursWithin(positions, distance).map((near) => [...near].sort((a, b) => a - b))).toEqual(wanted);
    }));
  });

  test('just as far is not near', () => expect(neighboursWithin(gridOf(1, 3), 1)).toEqual([[], [], []]));
});

describe('the nearest copies', () => {
  test('and how many pairs are as near, as by looking at every pair', () => {
    fc.assert(fc.property(spots, fc.integer({ min: 1, max: 4 }), (positions, kinds) => {
      const donors = positions.map((_, at) => (at * 7) % kinds);
      const all = positions.flatMap((one, at) => positions.slice(at + 1).flatMap((other, more) => (donors[at] === donors[at + 1 + more] ? [between(one, other)] : [])));
      const nearest = Math.min(Number.POSITIVE_INFINITY, ...all);
      const found = nearestCopies(donors, positions);
      if (nearest === Number.POSITIVE_INFINITY) expect(found).toEqual({ nearest, pairs: 0 });
      else expect(found).toEqual({ nearest: expect.closeTo(nearest, 9), pairs: all.filter((distance) => distance < nearest + 1e-9).length });
    }));
  });
});

describe('no layout does better than the bound', () => {
  test('of points in a rectangle, worked by hand from the rule', () => {
    // Area 12, perimeter 14, nine points: 8 d^2 - 7 d - 24 / sqrt(3) = 0. Points inside change nothing.
    const wanted = (7 + Math.sqrt(49 + (32 * 24) / Math.sqrt(3))) / 16;
    const corners: Position[] = [{ x: 0, y: 0 }, { x: 4, y: 0 }, { x: 4, y: 3 }, { x: 0, y: 3 }];
    expect(packingBound(9, corners)).toBeCloseTo(wanted, 12);
    expect(packingBound(9, [{ x: 1, y: 2 }, ...corners, { x: 2, y: 0 }, { x: 3, y: 1 }])).toBeCloseTo(wanted, 12);
    expect(packingBound(9, corners.map(({ x, y }) => ({ x: x - 100, y: y + 50 })).reverse())).toBeCloseTo(wanted, 12);
  });

  test('of points in an octagon: cut corners count, what lies inside does not', () => {
    // A square of three with half a square cut off each corner: area 7, perimeter 4 + 4 sqrt(2).
    const corners = [[1, 0], [2, 0], [3, 1], [3, 2], [2, 3], [1, 3], [0, 2], [0, 1]].map(([x, y]) => ({ x: x!, y: y! }));
    const half = 2 + 2 * Math.SQRT2;
    const wanted = (half + Math.sqrt(half * half + (32 * 7) / Math.sqrt(3))) / 8;
    for (const away of [0, -7]) {
      const positions = [{ x: 1, y: 1 }, ...corners, { x: 2, y: 2 }, { x: 1.5, y: 0.5 }].map(({ x, y }) => ({ x: x + away, y: y + away }));
      expect(packingBound(5, positions)).toBeCloseTo(wanted, 12);
    }
  });

  test('of points in a triangle, and on a slanting line', () => {
    // Area 6, perimeter 12, three points: 2 d^2 - 6 d - 12 / sqrt(3) = 0.
    expect(packingBound(3, [{ x: 0, y: 0 }, { x: 4, y: 0 }, { x: 0, y: 3 }])).toBeCloseTo((6 + Math.sqrt(36 + 96 / Math.sqrt(3))) / 4, 12);
    // Ten long, there and back: half the perimeter is ten, and six points stand two apart at most.
    expect(packingBound(6, [{ x: 0, y: 0 }, { x: 3, y: 4 }, { x: 6, y: 8 }])).toBeCloseTo(2, 12);
    for (const n of [0, 1]) expect(packingBound(n, gridOf(3, 3))).toBe(Number.POSITIVE_INFINITY);
    expect(packingBound(2, [{ x: 1, y: 1 }])).toBe(0);
  });
});

describe('rows and columns', () => {
  test('worked by hand, square and offset', () => {
    expect(gridOf(2, 3, 2)).toEqual([[0, 0], [2, 0], [4, 0], [0, 2], [2, 2], [4, 2]].map(([x, y]) => ({ x, y })));
    const high = expect.closeTo(Math.sqrt(3), 12);
    expect(gridOf(3, 2, 2, true)).toEqual([{ x: 0, y: 0 }, { x: 2, y: 0 }, { x: 1, y: high }, { x: 3, y: high }, { x: 0, y: expect.closeTo(2 * Math.sqrt(3), 12) }, { x: 2, y: expect.closeTo(2 * Math.sqrt(3), 12) }]);
    expect([gridOf(0, 5), gridOf(5, 0)]).toEqual([[], []]);
  });

  test('a million positions at most, in whole rows and columns, not too near and not too far', () => {
    expect(gridOf(1, 1e6).length).toBe(1e6);
    for (const [rows, columns] of [[1000, 1001], [1.5, 2], [2, 1.5], [-1, 2], [2, Number.NaN]] as const) expect(() => gridOf(rows, columns)).toThrow(expect.objectContaining({ code: 'survival/not-a-count' }));
    for (const spacing of [1e-6, 1e6, 0, -1, Number.NaN]) expect(() => gridOf(2, 2, spacing)).toThrow(expect.objectContaining({ code: 'numbers/not-a-size' }));
  });
});

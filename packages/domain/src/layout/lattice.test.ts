import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { latticeOf } from './lattice.ts';
import { latticeStarts } from './lattice-starts.ts';
import { nearestCopies } from './nearest-copies.ts';
import { gridOf, type Position } from './position.ts';

const at = (x: number, y: number): Position => ({ x, y });

describe('the lattice that positions lie on', () => {
  test('offset rows: half a step along for each row', () => {
    const lattice = latticeOf(gridOf(3, 3, 2, true))!;
    expect(lattice).toMatchObject({ along: { x: 2, y: 0 }, across: { x: 1, y: expect.closeTo(Math.sqrt(3), 12) } });
    gridOf(3, 3, 2, true).forEach(({ x, y }, one) => {
      const { a, b } = lattice.steps[one]!;
      expect([a * lattice.along.x + b * lattice.across.x, a * lattice.along.y + b * lattice.across.y]).toEqual([expect.closeTo(x, 9), expect.closeTo(y, 9)]);
    });
  });

  test('wherever it begins, however wide its rows: steps lead from the first corner', () => {
    expect(latticeOf([at(5, -3), at(7, -3), at(9, 0)])).toEqual({ steps: [{ a: 0, b: 0 }, { a: 1, b: 0 }, { a: 2, b: 1 }], along: at(2, 0), across: at(0, 3) });
    // Every second column left out is a wider lattice, not an offset one.
    expect(latticeOf([at(0, 0), at(4, 0), at(0, 2), at(4, 2)])).toMatchObject({ along: at(4, 0), across: at(0, 2) });
  });

  test('a single row, a single place, and none', () => {
    expect(latticeOf([at(3, 1), at(6, 1)])).toEqual({ steps: [{ a: 0, b: 0 }, { a: 1, b: 0 }], along: at(3, 0), across: at(0, 1) });
    expect(latticeOf([at(3, 1)])).toEqual({ steps: [{ a: 0, b: 0 }], along: at(1, 0), across: at(0, 1) });
    expect(latticeOf([])).toBeUndefined();
  });

  test('rounding of coordinates is no crooked row, a hand’s breadth is', () => {
    expect(latticeOf([at(0, 0), at(1 + 1e-9, 0), at(2, 0), at(1, 1)])).toMatchObject({ steps: [{ a: 0, b: 0 }, { a: 1, b: 0 }, { a: 2, b: 0 }, { a: 1, b: 1 }], along: { x: expect.closeTo(1, 6) } });
    // The farther along the row, the more a third that was cut off adds up to.
    expect(latticeOf(Array.from({ length: 101 }, (_, step) => at(Math.round((step / 3) * 1e7) / 1e7, 0)))?.steps.at(-1)).toEqual({ a: 100, b: 0 });
    expect(latticeOf([at(0, 0), at(1.01, 0), at(2, 0), at(0, 1)])).toBeUndefined();
    expect(latticeOf([at(0, 0), at(1, 0), at(0, 1), at(0, 2.3)])).toBeUndefined();
  });
});

describe('layouts to begin from', () => {
  test('worked by hand: four, three and two on three rows of three, the chessboard first', () => {
    const [rooms, inTurn] = latticeStarts([4, 3, 2], gridOf(3, 3));
    // Four have the four places between; three and two share the five. Or all in turn, the five places first.
    expect(rooms).toEqual({ donors: [1, 0, 1, 0, 1, 0, 2, 0, 2], nearest: expect.closeTo(Math.SQRT2, 12) });
    expect(inTurn).toEqual({ donors: [0, 1, 0, 1, 0, 2, 0, 2, 1], nearest: expect.closeTo(Math.SQRT2, 12) });
    // The donor with most is the first to choose, whichever place it has in the list.
    expect(latticeStarts([2, 4, 3], gridOf(3, 3))[0]!.donors).toEqual([2, 1, 2, 1, 2, 1, 0, 1, 0]);
  });

  test('worked by hand: who finds no class that holds all its plants has most of them together, the others where room is left', () => {
    // Thirteen places of one colour and twelve of the other: nine in the twelve, eight in the thirteen, five of the last eight beside them.
    const { donors } = latticeStarts([9, 8, 8], gridOf(5, 5))[0]!;
    const colours = [0, 1].map((colour) => donors.filter((_, place) => place % 2 === colour).join(''));
    expect(colours).toEqual(['1111111122222', '000000000222']);
    expect(latticeStarts([8, 9, 8], gridOf(5, 5))[1]!.donors.filter((_, place) => place % 2 === 0).join('')).toBe('1111111110000');
    expect(latticeStarts([1, 1, 1], gridOf(1, 3)).every(({ donors: three }) => [...three].sort().join('') === '012')).toBe(true);
  });

  test('where every class holds one donor, copies stand as far apart as told', () => {
    for (const [counts, positions] of [[[9, 9, 9, 9], gridOf(6, 6)], [[8, 8], gridOf(4, 4)], [[5, 5, 5, 5, 5], gridOf(5, 5)]] as const) {
      const [first] = latticeStarts(counts, positions);
      expect(nearestCopies(first!.donors, positions).nearest).toBeCloseTo(first!.nearest, 9);
    }
  });

  test('none where one donor has more than half, nor where positions lie anyhow; else the widest first, three of each at most', () => {
    expect(latticeStarts([5, 4], gridOf(3, 3))).toEqual([]);
    expect(latticeStarts([1, 1, 1], [at(0, 0), at(1, 0), at(2.3, 1)])).toEqual([]);
    expect(latticeStarts([4, 4, 1], gridOf(3, 3)).length).toBeGreaterThan(0);
    const starts = latticeStarts([6, 6, 6, 6, 6, 6], gridOf(6, 6));
    // Six, five and four classes, three sublattices each, filled in two ways.
    expect(starts).toHaveLength(3 * 3 * 2);
    starts.forEach(({ nearest }, one) => expect(nearest).toBeLessThanOrEqual(starts[one - 1]?.nearest ?? Number.POSITIVE_INFINITY));
  });

  test('every start plants what there is', () => {
    fc.assert(fc.property(fc.array(fc.integer({ min: 1, max: 9 }), { minLength: 2, maxLength: 6 }), fc.boolean(), (counts, isOffset) => {
      const all = counts.reduce((sum, n) => sum + n, 0);
      for (const { donors } of latticeStarts(counts, gridOf(Math.ceil(all / 5), 5, 1, isOffset).slice(0, all))) {
        expect(donors).toHaveLength(all);
        expect(counts.map((_, donor) => donors.filter((one) => one === donor).length)).toEqual(counts);
      }
    }), { numRuns: 30 });
  });
});

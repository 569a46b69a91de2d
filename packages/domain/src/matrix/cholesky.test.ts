import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { inverseOf, isDefiniteWithin, solved } from './cholesky.ts';

describe('a symmetric matrix', () => {
  // 4x + 2y = 2 and 2x + 10y = 7: x = (2 x 10 - 2 x 7) / 36, y = (4 x 7 - 2 x 2) / 36.
  test('worked by hand: two equations, and the inverse by Cramer’s rule', () => {
    expect(solved([[4, 2], [2, 10]], [2, 7])).toEqual([expect.closeTo(6 / 36, 14), expect.closeTo(24 / 36, 14)]);
    expect(inverseOf([[4, 2], [2, 10]])).toEqual([[expect.closeTo(10 / 36, 14), expect.closeTo(-2 / 36, 14)], [expect.closeTo(-2 / 36, 14), expect.closeTo(4 / 36, 14)]]);
  });

  test('times its inverse is one on the diagonal and nothing beside it', () => {
    const squares = fc.integer({ min: 1, max: 5 }).chain((n) => fc.array(fc.array(fc.integer({ min: -5, max: 5 }), { minLength: n, maxLength: n }), { minLength: n, maxLength: n }));
    fc.assert(fc.property(squares, (b) => {
      // B'B + I is symmetric and positive definite, whatever B.
      const a = b.map((_, i) => b.map((_row, j) => b.reduce((sum, row) => sum + row[i]! * row[j]!, i === j ? 1 : 0)));
      const inverse = inverseOf(a)!;
      a.forEach((row, i) => a.forEach((_, j) => expect(row.reduce((sum, value, k) => sum + value * inverse[k]![j]!, 0)).toBeCloseTo(i === j ? 1 : 0, 8)));
    }));
  });

  test('without information in some direction there is no answer', () => {
    expect(inverseOf([[1, 1], [1, 1]])).toBeUndefined();
    expect(inverseOf([[0]])).toBeUndefined();
    expect(inverseOf([[-1]])).toBeUndefined();
    // Information in one direction is not enough.
    expect(inverseOf([[1, 0], [0, 0]])).toBeUndefined();
    expect(solved([[1, 0], [0, 0]], [1, 0])).toBeUndefined();
  });

  test('dust is told by the size of the matrix, in whatever unit it is', () => {
    for (const unit of [1e-9, 1, 1e9]) {
      expect(inverseOf([[unit, unit], [unit, unit * (1 + 1e-13)]])).toBeUndefined();
      expect(inverseOf([[unit, unit], [unit, unit * (1 + 1e-10)]])).toBeDefined();
    }
  });

  test('what is dust in the whole is nothing in the part', () => {
    expect(isDefiniteWithin([[1e-9]], [[1]])).toBe(true);
    expect(isDefiniteWithin([[1e-13]], [[1]])).toBe(false);
    expect(isDefiniteWithin([[1e-13]], [[1e-13]])).toBe(true);
  });
});

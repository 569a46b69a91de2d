import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { hillNumber } from './hill-number.ts';
import { largestShare } from './largest-share.ts';

describe('largestShare', () => {
  // Girdled-tree spiders of Chao A et al. (2014) Ecol. Monogr. 84:45-67: the commonest is 46 of 168.
  test('agrees with a published count', () => {
    const rest = [22, 17, 15, 15, 9, 8, 6, 6, 4, 2, 2, 2, 2, ...Array<number>(12).fill(1)];

    expect(largestShare([46, ...rest])).toBe(46 / 168);
  });

  test('agrees with cases worked by hand', () => {
    expect(largestShare([5, 3, 2])).toBe(1 / 2);
    expect(largestShare([1, 0, 91, 8])).toBe(91 / 100);
    expect(largestShare([4])).toBe(1);
  });

  test('one over it is the least that any order of diversity can come to', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 500 }), { minLength: 1 }), (plants) => {
        expect(largestShare(plants)).toBeGreaterThanOrEqual(1 / plants.length);
        expect(hillNumber(plants, 40)).toBeGreaterThanOrEqual((1 / largestShare(plants)) * (1 - 1e-12));
      }),
    );
  });

  test.each([
    ['diversity/no-plants', [0]],
    ['diversity/not-a-count', [1, -1]],
    ['diversity/not-a-count', [Number.NaN]],
  ])('answers %s for %o', (code, plants) => {
    expect(() => largestShare(plants)).toThrow(expect.objectContaining({ name: 'DomainError', code }));
  });
});

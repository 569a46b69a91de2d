import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { MixedBatch } from './mixed-batch.ts';
import { mixedBounds } from './mixed-bounds.ts';

const NOBODY: ReadonlySet<string> = new Set();

describe('mixedBounds', () => {
  // Two plants of A, B, C: one donor in 3 of 9 cases, two in 6: expected 15/9 = 3 (1 - (2/3)^2).
  // Known A beside it: B and C each with 1 - 4/9: 1 + 10/9.
  // One plant each of {A, B} and {B, C}: A 1/2, B 3/4, C 1/2. B may be in both, or A and C.
  test.each([
    { name: 'no mixed batch', known: ['A'], mixed: [], bounds: [1, 1, 1] },
    { name: 'two plants of three', known: [], mixed: [['ABC', 2]], bounds: [1, 5 / 3, 2] },
    { name: 'one of them known', known: ['A'], mixed: [['ABC', 2]], bounds: [1, 19 / 9, 3] },
    { name: 'two batches that overlap', known: [], mixed: [['AB', 1], ['BC', 1]], bounds: [1, 7 / 4, 2] },
    { name: 'two batches apart', known: [], mixed: [['AB', 1], ['CD', 1]], bounds: [2, 2, 2] },
    { name: 'a single candidate', known: [], mixed: [['A', 7]], bounds: [1, 1, 1] },
    { name: 'an empty batch', known: [], mixed: [['AB', 0]], bounds: [0, 0, 0] },
    { name: 'a chain where one must give way', known: [], mixed: [['AB', 1], ['A', 1]], bounds: [1, 3 / 2, 2] },
    { name: 'one donor asked to give way twice', known: [], mixed: [['ABC', 1], ['A', 1], ['A', 1]], bounds: [1, 5 / 3, 2] },
  ] as const)('agrees with $name worked by hand', ({ known, mixed, bounds: [atLeast, expected, atMost] }) => {
    const batches = mixed.map(([candidates, plants]) => ({ candidates: [...candidates], plants }));
    const bounds = mixedBounds(new Set<string>(known), batches);

    expect(bounds).toMatchObject({ atLeast, atMost });
    expect(bounds.expected).toBeCloseTo(expected, 12);
  });

  // As many draws as there are to draw from meet a share of .632 of them: 1 - 1/e, printed to three decimals in the
  // title of Efron B, Tibshirani R (1997) "Improvements on cross-validation: the .632+ bootstrap method",
  // J. Am. Stat. Assoc. 92:548-560.
  test('meets .632 of a thousand candidates with a thousand plants', () => {
    const candidates = Array.from({ length: 1000 }, (_, index) => `donor ${index}`);
    const { expected, atMost } = mixedBounds(NOBODY, [{ candidates, plants: 1000 }]);

    expect(Math.abs(expected / 1000 - 0.632)).toBeLessThanOrEqual(0.0005);
    expect(atMost).toBe(1000);
  });

  test('finds the same safe figure in any order of batches', () => {
    const [ab, bc, cd] = ['AB', 'BC', 'CD'].map((candidates) => ({ candidates: [...candidates], plants: 1 }));

    expect(mixedBounds(NOBODY, [ab!, bc!, cd!]).atLeast).toBe(2);
    expect(mixedBounds(NOBODY, [bc!, cd!, ab!]).atLeast).toBe(2);
  });

  const batch = fc.record({
    candidates: fc.uniqueArray(fc.constantFrom('A', 'B', 'C', 'D'), { minLength: 1, maxLength: 3 }),
    plants: fc.integer({ min: 0, max: 2 }),
  });
  const batches = fc.array(batch, { maxLength: 3 });
  const known = fc.uniqueArray(fc.constantFrom('A', 'B', 'C', 'D'), { maxLength: 2 }).map((list) => new Set<string>(list));

  test('agrees with dealing every plant to every candidate in turn', () => {
    fc.assert(
      fc.property(known, batches, (donors, mixed) => {
        const { atLeast, expected, atMost } = mixedBounds(donors, mixed);
        const { least, mean, most } = dealt(donors, mixed);

        expect(atMost).toBe(most);
        expect(expected).toBeCloseTo(mean, 9);
        expect(atLeast).toBeLessThanOrEqual(least);
      }),
    );
  });

  test('a further plant never lowers a bound, and naming a donor twice changes nothing', () => {
    fc.assert(
      fc.property(known, batches, batch, (donors, mixed, more) => {
        const [before, after] = [mixedBounds(donors, mixed), mixedBounds(donors, [...mixed, more])];
        expect(after.expected).toBeGreaterThanOrEqual(before.expected - 1e-12);
        expect(after.atMost).toBeGreaterThanOrEqual(before.atMost);

        const doubled = mixed.map((b) => ({ ...b, candidates: [...b.candidates, ...b.candidates] }));
        expect(mixedBounds(donors, doubled)).toEqual(before);
        expect(mixedBounds(donors, mixed.toReversed()).atLeast).toBe(before.atLeast);
      }),
    );
  });

  test.each([
    ['diversity/no-candidates', { candidates: [], plants: 3 }],
    ['diversity/not-a-count', { candidates: ['A'], plants: -1 }],
    ['diversity/not-a-count', { candidates: ['A'], plants: Number.NaN }],
  ])('answers %s', (code, mixed) => {
    expect(() => mixedBounds(NOBODY, [mixed])).toThrow(expect.objectContaining({ name: 'DomainError', code }));
  });
});

/** All ways in which the plants can be of their candidates, each as likely, written out. */
function dealt(known: ReadonlySet<string>, mixed: readonly MixedBatch[]): { least: number; mean: number; most: number } {
  let hands: Array<{ donors: ReadonlySet<string>; chance: number }> = [{ donors: known, chance: 1 }];
  for (const { candidates, plants } of mixed) {
    for (let plant = 0; plant < plants; plant += 1) {
      hands = hands.flatMap(({ donors, chance }) =>
        candidates.map((donor) => ({ donors: new Set([...donors, donor]), chance: chance / candidates.length })),
      );
    }
  }
  const sizes = hands.map(({ donors }) => donors.size);
  const mean = hands.reduce((sum, { donors, chance }) => sum + donors.size * chance, 0);
  return { least: Math.min(...sizes), mean, most: Math.max(...sizes) };
}

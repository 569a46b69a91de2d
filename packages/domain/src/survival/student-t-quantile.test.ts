import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { studentTQuantile } from './student-t-quantile.ts';

// Upper critical values of Student's t as printed to three decimals in the usual tables,
// e.g. NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.2; figures from memory.
const PRINTED: ReadonlyArray<readonly [freedom: number, p95: number, p975: number, p995: number]> = [
  [1, 6.314, 12.706, 63.657],
  [2, 2.92, 4.303, 9.925],
  [3, 2.353, 3.182, 5.841],
  [4, 2.132, 2.776, 4.604],
  [5, 2.015, 2.571, 4.032],
  [9, 1.833, 2.262, 3.25],
  [10, 1.812, 2.228, 3.169],
  [20, 1.725, 2.086, 2.845],
  [30, 1.697, 2.042, 2.75],
  [60, 1.671, 2.0, 2.66],
  [100, 1.66, 1.984, 2.626],
];
const HALF_A_PRINTED_DIGIT = 0.0005;

describe('studentTQuantile', () => {
  test.each(PRINTED)('agrees with the printed table at %d degrees of freedom', (freedom, p95, p975, p995) => {
    expect(Math.abs(studentTQuantile(0.95, freedom) - p95)).toBeLessThanOrEqual(HALF_A_PRINTED_DIGIT);
    expect(Math.abs(studentTQuantile(0.975, freedom) - p975)).toBeLessThanOrEqual(HALF_A_PRINTED_DIGIT);
    expect(Math.abs(studentTQuantile(0.995, freedom) - p995)).toBeLessThanOrEqual(HALF_A_PRINTED_DIGIT);
  });

  // One degree of freedom is Cauchy: t = tan(pi (p - 1/2)), so 1 at p = 3/4.
  // Two: t = (2p - 1) / sqrt(2 p (1 - p)), so sqrt(2/3) at 3/4.
  // Four, at t = 2: the angle has sin^2 = 4/8, A = sqrt(1/2) (1 + 1/4), p = (1 + A) / 2.
  test('agrees with three cases worked by hand', () => {
    expect(studentTQuantile(3 / 4, 1)).toBeCloseTo(1, 12);
    expect(studentTQuantile(3 / 4, 2)).toBeCloseTo(Math.sqrt(2 / 3), 12);
    expect(studentTQuantile((1 + (Math.SQRT1_2 * 5) / 4) / 2, 4)).toBeCloseTo(2, 12);
    expect(studentTQuantile(1 / 2, 7)).toBe(0);
  });

  const level = fc.double({ min: 0.001, max: 0.999, noNaN: true });
  const freedom = fc.integer({ min: 1, max: 300 });

  test('the density, summed by Simpson up to the answer, gives the probability back', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.5, max: 0.999, noNaN: true }), freedom, (probability, degrees) => {
        expect(shareBelow(studentTQuantile(probability, degrees), degrees)).toBeCloseTo(probability, 8);
      }),
    );
  });

  test('is mirrored about one half', () => {
    fc.assert(
      fc.property(level, freedom, (probability, degrees) => {
        const mirrored = -studentTQuantile(1 - probability, degrees);
        expect(studentTQuantile(probability, degrees) / mirrored || 1).toBeCloseTo(1, 9);
      }),
    );
  });

  test('comes down to the normal point as donors grow, and never below it', () => {
    fc.assert(
      fc.property(freedom, (degrees) => {
        expect(studentTQuantile(0.975, degrees)).toBeGreaterThan(studentTQuantile(0.975, degrees + 1));
      }),
    );
    expect(studentTQuantile(0.975, 20_000)).toBeGreaterThan(1.959963984540054);
    expect(studentTQuantile(0.975, 20_000)).toBeCloseTo(1.959963984540054, 3);
  });

  test.each([
    ['survival/not-a-level', 0, 4],
    ['survival/not-a-level', 1, 4],
    ['survival/not-a-level', Number.NaN, 4],
    ['survival/not-a-count', 0.975, 0],
    ['survival/not-a-count', 0.975, 2.5],
    ['survival/not-a-count', 0.975, Number.NaN],
  ])('answers %s for probability %d with %d degrees of freedom', (code, probability, degrees) => {
    expect(() => studentTQuantile(probability, degrees)).toThrow(
      expect.objectContaining({ name: 'DomainError', code }),
    );
  });
});

/** In the angle the density is cosine^(freedom - 1): smooth and bounded, so 4,000 strips are plenty. */
function shareBelow(t: number, freedom: number): number {
  const density = (angle: number): number => Math.cos(angle) ** (freedom - 1);
  const within = simpson(density, Math.atan(t / Math.sqrt(freedom)));
  return 0.5 + within / (2 * simpson(density, Math.PI / 2));
}

function simpson(curve: (at: number) => number, to: number): number {
  const strips = 4_000;
  let sum = curve(0) + curve(to);
  for (let strip = 1; strip < strips; strip += 1) sum += curve((to * strip) / strips) * (strip % 2 === 1 ? 4 : 2);
  return (sum * to) / (3 * strips);
}

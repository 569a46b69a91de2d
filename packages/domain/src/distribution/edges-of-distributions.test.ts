import { describe, expect, test } from 'vitest';
import { betaQuantile } from './beta-quantile.ts';
import { betaShare } from './beta-share.ts';
import { logBinomialMass } from './binomial-mass.ts';
import { gammaTail } from './gamma-tail.ts';
import { normalQuantile, normalTail } from './normal.ts';
import { stirlingError } from './stirling-error.ts';
import { studentTBeyond } from './student-t-quantile.ts';
import { studentTTail } from './student-t-tail.ts';

const near = (value: number, wanted: number, digits = 1e-12) => expect(Math.abs(value - wanted)).toBeLessThanOrEqual(digits * Math.abs(wanted));
const NO_SHARE = expect.objectContaining({ code: 'numbers/not-a-share' });

describe('the normal distribution', () => {
  test('both tails are one, and the middle is the middle', () => {
    for (const z of [0.1, 1, 3]) expect(normalTail(-z) + normalTail(z)).toBeCloseTo(1, 15);
    expect([normalTail(0), normalQuantile(0.5)]).toEqual([0.5, 0]);
    expect(normalTail(-1)).toBeGreaterThan(0.8);
  });

  test('the point leads back to the share, from next to nothing to the middle', () => {
    for (const share of [1e-300, 1e-100, 1e-20, 1e-9, 1e-4, 0.01, 0.1, 0.2, 0.3, 0.4, 0.45, 0.499]) near(normalTail(-normalQuantile(share)), share, 1e-12);
    for (const share of [0.501, 0.55, 0.7, 0.9, 0.999, 1 - 1e-9]) near(normalTail(normalQuantile(share)), 1 - share, 1e-12);
    expect(normalQuantile(Number.MIN_VALUE)).toBeGreaterThan(-38.6);
    expect(normalQuantile(Number.MIN_VALUE)).toBeLessThan(-38.3);
  });

  test.each([0, 1, -0.1, 1.1, Number.NaN])('%d is between nothing and nothing', (share) => expect(() => normalQuantile(share)).toThrow(NO_SHARE));
});

describe('the gamma distribution', () => {
  /** With a whole shape the tail is a sum: e^-x (1 + x + ... + x^(a - 1) / (a - 1)!). */
  const sum = (x: number, a: number) => Array.from({ length: a }).reduce<{ term: number; all: number }>(({ term, all }, _, k) => ({ term: (term * x) / (k + 1), all: all + term }), { term: Math.exp(-x), all: 0 }).all;
  test('of whole shapes is a sum, on both sides of the mean and at it', () => {
    for (const a of [1, 2, 5, 20]) for (const x of [1e-6, 0.5, a - 1, a - 0.5, a, a + 1, a + 1.5, 2 * a, 5 * a, 100]) near(gammaTail(x, a), sum(x, a), 1e-12);
  });
  test('begins at all and ends at nothing', () => {
    for (const a of [1e-100, 0.1, 2, 1e6]) expect([gammaTail(0, a), gammaTail(Number.POSITIVE_INFINITY, a)]).toEqual([1, 0]);
    expect(() => gammaTail(-1e-9, 1)).toThrow(expect.objectContaining({ code: 'numbers/not-a-size' }));
    expect(() => gammaTail(Number.NaN, 1)).toThrow(expect.objectContaining({ code: 'numbers/not-a-size' }));
  });
  test('shapes are of a size that a count can have', () => {
    for (const shape of [1e-100, 1e15]) expect(gammaTail(0, shape)).toBe(1);
    for (const shape of [0.9e-100, 1.1e15, 0, -1, Number.NaN, Number.POSITIVE_INFINITY]) expect(() => gammaTail(1, shape)).toThrow(expect.objectContaining({ code: 'numbers/not-a-shape' }));
  });
});

describe('binomial chances', () => {
  test('of none and of all are powers, also of chances next to nothing and next to one', () => {
    near(Math.exp(logBinomialMass(0, 5, 0.2)), 0.8 ** 5);
    near(Math.exp(logBinomialMass(5, 5, 0.2)), 0.2 ** 5);
    near(Math.exp(logBinomialMass(5, 5, 0.8)), 0.8 ** 5);
    near(logBinomialMass(0, 7, 1e-20), -7e-20);
    near(logBinomialMass(7, 7, 1 - 1e-20, 1e-20), -7e-20);
    near(logBinomialMass(7, 7, 1e-20), 7 * Math.log(1e-20));
    near(logBinomialMass(2, 3, 1 - 1e-20, 1e-20), Math.log(3e-20));
  });

  test('of what always or never happens are one and nothing', () => {
    const chances = (p: number) => [0, 1, 2, 3].map((k) => Math.exp(logBinomialMass(k, 3, p)));
    expect([chances(0), chances(1)]).toEqual([[1, 0, 0, 0], [0, 0, 0, 1]]);
  });

  test('need no whole plants: between whole numbers they lie between, and half of one is 4 / pi of a half each', () => {
    // 1! / (1/2)!^2 = 4 / pi.
    near(Math.exp(logBinomialMass(0.5, 1, 0.5)), 2 / Math.PI, 1e-11);
    near(stirlingError(0.5), Math.log(Math.sqrt(Math.PI) / 2) - (0.5 * Math.log(0.5) - 0.5 + 0.5 * Math.log(Math.PI)), 1e-12);
  });
});

describe('Student’s t', () => {
  test('with one and two degrees of freedom in closed form, either way', () => {
    for (const t of [0, 0.3, 1, 4, 30]) {
      near(studentTTail(t, 1), 0.5 - Math.atan(t) / Math.PI, 1e-11);
      near(studentTTail(-t, 2), 0.5 + t / (2 * Math.sqrt(2 + t * t)), 1e-12);
    }
    for (const chance of [0.5, 0.4, 0.25, 0.025, 1e-6, 1e-12]) {
      expect(studentTBeyond(chance, 1)).toBeCloseTo(1 / Math.tan(Math.PI * chance), chance < 0.01 ? -4 : 9);
      near(studentTBeyond(chance, 2), (1 - 2 * chance) / Math.sqrt(2 * chance * (1 - chance)), 1e-11);
    }
  });

  test('beyond where squares run out is beyond all numbers', () => {
    expect(studentTBeyond(1e-200, 1)).toBe(Number.POSITIVE_INFINITY);
    for (const value of [1e200, Number.POSITIVE_INFINITY]) expect([studentTTail(value, 3), studentTTail(-value, 3)]).toEqual([0, 1]);
  });
});

describe('the beta distribution', () => {
  test('with one shape of 1 is a power, down to points that have hardly a digit left', () => {
    for (const [share, a] of [[0.3, 0.01], [0.3, 0.1], [0.025, 0.5], [0.5, 3], [0.975, 40], [1e-200, 2]] as const) {
      near(betaQuantile(share, a, 1), share ** (1 / a), 1e-11);
      expect(1 - betaQuantile(1 - share, 1, a)).toBeCloseTo(share ** (1 / a), 12);
    }
  });

  test('its ends are nothing and all, and shares beyond them are none', () => {
    expect([betaQuantile(0, 2, 3), betaQuantile(1, 2, 3), betaShare(0, 2, 3), betaShare(1, 2, 3)]).toEqual([0, 1, 0, 1]);
    for (const share of [-0.1, 1.1, Number.NaN]) {
      expect(() => betaQuantile(share, 2, 3)).toThrow(NO_SHARE);
      expect(() => betaShare(share, 2, 3)).toThrow(NO_SHARE);
    }
    expect(() => betaQuantile(0, -1, 3)).toThrow(expect.objectContaining({ code: 'numbers/not-a-shape' }));
  });

  test('of whole shapes is a binomial tail, everywhere', () => {
    // I_x(a, b) is the chance of a or more among a + b - 1.
    const ways = (n: number, k: number) => Array.from({ length: k }).reduce<number>((all, _, at) => (all * (n - at)) / (at + 1), 1);
    for (const [a, b] of [[1, 1], [3, 2], [2, 9], [10, 4], [12, 12]] as const) {
      for (const x of [0.001, 0.1, 0.3, 0.5, (a + 1) / (a + b + 2), 0.7, 0.9, 0.999]) {
        const n = a + b - 1;
        const wanted = Array.from({ length: b }, (_, more) => ways(n, a + more) * x ** (a + more) * (1 - x) ** (b - 1 - more)).reduce((all, one) => all + one);
        near(betaShare(x, a, b), wanted, 1e-11);
      }
    }
  });
});

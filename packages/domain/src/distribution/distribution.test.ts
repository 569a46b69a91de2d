import { describe, expect, test } from 'vitest';
import { betaQuantile } from './beta-quantile.ts';
import { betaShare } from './beta-share.ts';
import { logBinomialMass } from './binomial-mass.ts';
import { chiSquareTail } from './chi-square-tail.ts';
import { deviancePart } from './deviance-part.ts';
import { normalQuantile, normalTail } from './normal.ts';
import { stirlingError } from './stirling-error.ts';
import { studentTBeyond } from './student-t-quantile.ts';
import { studentTTail } from './student-t-tail.ts';
import { studentTQuantile } from '../survival/student-t-quantile.ts';

const near = (value: number, wanted: number, digits = 1e-12) => expect(Math.abs(value - wanted)).toBeLessThanOrEqual(digits * Math.abs(wanted));

describe('parts that stay small', () => {
  test('Stirling’s error, from 1! and 10! worked by hand', () => {
    near(stirlingError(1), 1 - 0.5 * Math.log(2 * Math.PI), 1e-13);
    near(stirlingError(10), Math.log(3_628_800) - (10 * Math.log(10) - 10 + 0.5 * Math.log(20 * Math.PI)), 1e-11);
  });

  test('a count far from its mean, and one beside it', () => {
    near(deviancePart(6, 2), 6 * Math.log(3) - 4);
    near(deviancePart(1e9 + 1, 1e9), 5e-10, 1e-8);
    expect(deviancePart(0, 3)).toBe(3);
  });

  test('binomial chances as fractions', () => {
    near(Math.exp(logBinomialMass(3, 10, 0.5)), 120 / 1024);
    near(Math.exp(logBinomialMass(1, 3, 1 / 3)), 12 / 27);
    expect(Math.exp(logBinomialMass(0, 5, 0))).toBe(1);
    expect(Math.exp(logBinomialMass(2, 5, 0))).toBe(0);
  });
});

describe('the beta distribution', () => {
  test('as polynomials worked by hand', () => {
    near(betaShare(0.3, 1, 1), 0.3);
    near(betaShare(0.25, 2, 3), 6 * 0.25 ** 2 - 8 * 0.25 ** 3 + 3 * 0.25 ** 4);
    near(betaShare(1e-9, 2, 3), 6e-18 - 8e-27 + 3e-36);
    near(betaShare(0.5, 1e9, 1e9), 0.5, 1e-7);
  });

  test('its quantile leads back, near both ends and in the middle', () => {
    for (const share of [1e-12, 0.025, 0.5, 0.975]) near(betaShare(betaQuantile(share, 3.5, 120), 3.5, 120), share, 1e-11);
    near(betaQuantile(0.3, 1, 1), 0.3);
    expect(betaQuantile(0, 2, 2)).toBe(0);
    expect(betaQuantile(1, 2, 2)).toBe(1);
  });

  test('mirrors', () => near(betaQuantile(0.1, 4, 9), 1 - betaQuantile(0.9, 9, 4), 1e-13));
});

describe('the normal and the chi-square distribution', () => {
  // Points printed in every table of the two.
  test.each([[0.975, 1.959963984540054], [0.95, 1.6448536269514722], [0.995, 2.5758293035489004], [0.5, 0]])('the point of %d', (share, z) => {
    expect(normalQuantile(share)).toBeCloseTo(z, 13);
    expect(normalQuantile(1 - share)).toBeCloseTo(-z, 13);
  });

  test('a tail of nine standard deviations keeps its digits', () => near(normalTail(9), 1.1285884059538408e-19, 1e-12));

  test('chi-square with two degrees of freedom is exponential', () => {
    for (const value of [0, 0.1, 3, 40, 400]) near(chiSquareTail(value, 2), Math.exp(-value / 2), 1e-12);
    near(chiSquareTail(3.841458820694124, 1), 0.05, 1e-12);
    near(chiSquareTail(1, 1), 2 * normalTail(1), 1e-13);
  });

  // Student's t with one degree of freedom is Cauchy's: 1/2 - atan(t)/pi; next to 0 and far out one of the two shares rounds to 1.
  test('Student’s tail keeps its digits next to the middle and far out', () => {
    expect(studentTTail(-1e-8, 1)).toBeCloseTo(0.5 + 1e-8 / Math.PI, 15);
    near(studentTTail(3e9, 1), 1 / (Math.PI * 3e9), 1e-12);
    near(studentTBeyond(1e-10, 1), 1 / (Math.PI * 1e-10), 1e-12);
    expect(() => studentTQuantile(1e-300, 1)).toThrow(expect.objectContaining({ code: 'survival/not-a-level' }));
  });

  test.each([() => normalQuantile(0), () => betaShare(2, 1, 1), () => betaShare(0.5, 0, 1), () => betaQuantile(Number.NaN, 1, 1), () => chiSquareTail(-1, 1)])('no answer is a refusal', (ask) => {
    expect(ask).toThrow(expect.objectContaining({ code: expect.stringMatching(/^numbers\//) }));
  });
});

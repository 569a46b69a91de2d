import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { donorRatioInterval, donorsAreAlike } from './donor-ratio-interval.ts';
import { wilsonInterval } from './wilson-interval.ts';

const tens = (...alive: number[]) => alive.map((successes) => ({ successes, plants: 10 }));

describe('donorRatioInterval', () => {
  // Five donors of ten, 8 10 6 9 7 alive. Residuals from 4/5: 0 2 -2 1 -1, squares 10.
  // Variance 5/4 x 10 / 50^2 = 1/200; binomial (4/5)(1/5)/50 = 1/312.5; design effect 25/16.
  test('agrees with a case worked by hand', () => {
    const { rate, standardError, designEffect, donors } = donorRatioInterval(tens(8, 10, 6, 9, 7));

    expect(rate).toBe(4 / 5);
    expect(standardError).toBeCloseTo(Math.sqrt(1 / 200), 14);
    expect(designEffect).toBeCloseTo(25 / 16, 12);
    expect(donors).toBe(5);
  });

  // The same case with t(4) = 2.776 as printed: 0.8 -+ 2.776 x 0.07071, to four decimals .6037 .9963.
  test('uses the printed point of t on four degrees of freedom', () => {
    const { lower, upper } = donorRatioInterval(tens(8, 10, 6, 9, 7));

    expect(Math.abs(lower - 0.6037)).toBeLessThanOrEqual(0.00005);
    expect(Math.abs(upper - 0.9963)).toBeLessThanOrEqual(0.00005);
  });

  // Hoblyn TN, Palmer RC (1934), plum root cuttings alive of 240 a treatment, as printed in Bartlett MS (1935)
  // J. R. Stat. Soc. Suppl. 2:248-252; from memory. Treatments stand in for donors, with a fifth made to bring
  // the sum to a plain fraction: 156 84 107 31 102 of 240 each is 480 of 1200 = 2/5, 96 expected from each.
  // Residuals 60 -12 11 -65 6, squares 3600 + 144 + 121 + 4225 + 36 = 8126; variance 5/4 x 8126 / 1200^2.
  test('agrees with hand arithmetic on real cuttings', () => {
    const outcomes = [156, 84, 107, 31, 102].map((successes) => ({ successes, plants: 240 }));
    const { rate, standardError, designEffect } = donorRatioInterval(outcomes);

    expect(rate).toBe(2 / 5);
    expect(standardError ** 2).toBeCloseTo((5 / 4) * (8126 / 1_440_000), 14);
    expect(designEffect).toBeCloseTo(((5 / 4) * 8126) / (1200 * (6 / 25)), 10);
  });

  const outcome = fc
    .integer({ min: 1, max: 200 })
    .chain((plants) => fc.record({ successes: fc.integer({ min: 0, max: plants }), plants: fc.constant(plants) }));
  const unlikeDonors = fc.array(outcome, { minLength: 5, maxLength: 40 }).filter((list) => !donorsAreAlike(list));

  test('holds the share, stays inside 0 and 1, and mirrors when the dead are counted', () => {
    fc.assert(
      fc.property(unlikeDonors, (outcomes) => {
        const living = donorRatioInterval(outcomes);
        const dead = donorRatioInterval(outcomes.map((o) => ({ ...o, successes: o.plants - o.successes })));

        expect(living.lower).toBeGreaterThanOrEqual(0);
        expect(living.lower).toBeLessThan(living.rate);
        expect(living.upper).toBeGreaterThan(living.rate);
        expect(living.upper).toBeLessThanOrEqual(1);
        expect(dead.lower).toBeCloseTo(1 - living.upper, 10);
        expect(dead.designEffect).toBeCloseTo(living.designEffect, 6);
      }),
    );
  });

  test('ten times the cuttings of the same donors tells no more, though Wilson says so', () => {
    const few = tens(8, 10, 6, 9, 7);
    const many = few.map(({ successes, plants }) => ({ successes: successes * 10, plants: plants * 10 }));

    expect(donorRatioInterval(many).standardError).toBeCloseTo(donorRatioInterval(few).standardError, 14);
    expect(wilsonInterval(400, 500).lower).toBeGreaterThan(wilsonInterval(40, 50).lower + 0.05);
  });

  test('leaves out donors without plants', () => {
    const empty = { successes: 0, plants: 0 };

    expect(donorRatioInterval([...tens(8, 10, 6, 9, 7), empty])).toEqual(donorRatioInterval(tens(8, 10, 6, 9, 7)));
  });

  test.each([
    ['survival/too-few-donors', tens(8, 10, 6, 9)],
    ['survival/too-few-donors', [...tens(8, 10, 6, 9), { successes: 0, plants: 0 }]],
    ['survival/too-few-donors', []],
    ['survival/donors-all-alike', tens(0, 0, 0, 0, 0)],
    ['survival/donors-all-alike', [3, 6, 9, 12, 15].map((plants) => ({ successes: plants / 3, plants }))],
    ['survival/not-a-count', tens(8, 11, 6, 9, 7)],
    ['survival/not-a-count', tens(8, Number.NaN, 6, 9, 7)],
    ['survival/not-a-count', tens(8, -1, 6, 9, 7)],
  ])('answers %s', (code, outcomes) => {
    expect(() => donorRatioInterval(outcomes)).toThrow(expect.objectContaining({ name: 'DomainError', code }));
  });

  test.each([0, 1, Number.NaN])('answers survival/not-a-level for a confidence of %d', (confidence) => {
    expect(() => donorRatioInterval(tens(8, 10, 6, 9, 7), confidence)).toThrow(
      expect.objectContaining({ code: 'survival/not-a-level' }),
    );
  });
});

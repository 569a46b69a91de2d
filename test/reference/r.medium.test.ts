import {
  alleleCapture,
  donorRatioInterval,
  donorsForCapture,
  hillNumber,
  rarefiedDonors,
  studentTQuantile,
  wilsonInterval,
} from '@sprigline/domain';
import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type R, startR, vector } from './r.ts';

// Our formulas beside R's own functions on random input; the seed makes a failure come back.
const SAMPLE = { numRuns: 20, seed: 19340248 };
const inputs = <T>(arbitrary: fc.Arbitrary<T>): T[] => fc.sample(arbitrary, SAMPLE);

let r: R;
beforeAll(async () => {
  r = await startR();
}, 60_000);
afterAll(() => r.stop());

const share = fc.double({ min: 0.001, max: 0.999, noNaN: true });
const someOfPlants = fc
  .integer({ min: 1, max: 2_000 })
  .chain((plants) => fc.tuple(fc.integer({ min: 0, max: plants }), fc.constant(plants)));
const bench = fc.array(fc.integer({ min: 1, max: 200 }), { minLength: 1, maxLength: 60 });

async function expectSame(code: string, ours: readonly number[]): Promise<void> {
  const theirs = await r.numbers(code);

  expect(theirs).toHaveLength(ours.length);
  ours.forEach((value, i) => {
    // Nine digits: `prop.test` and `qt` promise no more than that.
    expect(Math.abs(value - (theirs[i] ?? Number.NaN)), `${code} gave ${theirs[i]}, not ${value}`).toBeLessThanOrEqual(
      1e-9 * Math.max(1, Math.abs(value)),
    );
  });
}

describe('R agrees', () => {
  test.each(inputs(fc.tuple(share, fc.integer({ min: 1, max: 500 }))))('with the quantile of t at %d, %d', async (p, df) => {
    await expectSame(`qt(${p}, ${df})`, [studentTQuantile(p, df)]);
  });

  test.each(inputs(someOfPlants))('with Wilson for %d of %d', async (alive, plants) => {
    const { lower, upper } = wilsonInterval(alive, plants);

    await expectSame(`suppressWarnings(prop.test(${alive}, ${plants}, correct = FALSE)$conf.int)`, [lower, upper]);
  });

  // A regression through 0 that weighs by 1/plants has the ratio for its slope; its residuals give the variance.
  test.each(inputs(fc.array(someOfPlants, { minLength: 5, maxLength: 30 })))('with the interval by donors', async (...donors) => {
    const outcomes = donors.map(([successes, plants]) => ({ successes, plants }));
    const { rate, standardError, lower, upper } = donorRatioInterval(outcomes);

    await expectSame(
      `local({ y <- ${vector(outcomes.map((o) => o.successes))}; x <- ${vector(outcomes.map((o) => o.plants))}
        fit <- lm(y ~ 0 + x, weights = 1 / x); n <- length(x)
        se <- sqrt(var(residuals(fit) - mean(residuals(fit))) * n) / sum(x)
        at <- unname(coef(fit)) + qt(c(0.025, 0.975), n - 1) * se
        c(coef(fit), se, max(0, at[1]), min(1, at[2])) })`,
      [rate, standardError, lower, upper],
    );
  });

  test.each(inputs(fc.tuple(bench, fc.double({ min: 0, max: 5, noNaN: true }))))('with Hill numbers', async (counts, order) => {
    await expectSame(
      `local({ p <- prop.table(${vector(counts)}); c(exp(-sum(p * log(p))), 1 / sum(p^2), sum(p^${order})^(1 / (1 - ${order}))) })`,
      [hillNumber(counts, 1), hillNumber(counts, 2), hillNumber(counts, order)],
    );
  });

  test.each(inputs(fc.tuple(bench, share)))('with rarefaction, by its hypergeometric', async (counts, part) => {
    const all = counts.reduce((a, b) => a + b);
    const taken = Math.ceil(all * part);

    await expectSame(`local({ n <- ${vector(counts)}; sum(phyper(0, n, sum(n) - n, ${taken}, lower.tail = FALSE)) })`, [
      rarefiedDonors(counts, taken),
    ]);
  });

  test.each(inputs(fc.tuple(fc.integer({ min: 0, max: 300 }), share)))('with capture by %d donors at %d', async (donors, p) => {
    await expectSame(`pbinom(0, ${2 * donors}, ${p}, lower.tail = FALSE)`, [alleleCapture(donors, p)]);
  });

  test.each(inputs(fc.tuple(share, share)))('with the copies for a chance of %d at %d', async (chance, p) => {
    await expectSame(`qgeom(${chance}, ${p}) + 1`, [donorsForCapture(chance, p).copies]);
  });
});

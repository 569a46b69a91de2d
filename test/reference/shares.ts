import { clopperPearsonInterval, donorRatioInterval, midPInterval, newcombeDifference, overdispersion, sampleSize, wilsonInterval } from '@sprigline/domain';
import fc from 'fast-check';
import { vector } from './r.ts';
import { share, someOf, witness } from './witness.ts';

const confidence = fc.constantFrom(0.8, 0.9, 0.95, 0.99);
const wilsonInR = (alive: number, plants: number): string => `suppressWarnings(prop.test(${alive}, ${plants}, correct = FALSE)$conf.int)`;
const donors = fc.array(someOf(2_000), { minLength: 5, maxLength: 30 }).map((all) => all.map(([successes, plants]) => ({ successes, plants })));
const unalike = donors.filter((all) => new Set(all.map(({ successes, plants }) => successes / plants)).size > 1);

export const SHARES = [
  witness('Wilson', someOf(2_000), ([alive, plants]) => Object.values(wilsonInterval(alive, plants)), ([alive, plants]) => wilsonInR(alive, plants)),
  witness(
    'Clopper-Pearson, binom.test',
    fc.tuple(someOf(100_000), confidence),
    ([[alive, plants], level]) => Object.values(clopperPearsonInterval(alive, plants, level)),
    ([[alive, plants], level]) => `binom.test(${alive}, ${plants}, conf.level = ${level})$conf.int`,
  ),
  // R has no mid-P: its binomial must give half of what lies outside at each of our limits.
  witness(
    'mid-P, at its limits',
    fc.tuple(someOf(20_000).filter(([alive, plants]) => alive > 0 && alive < plants), confidence),
    ([, level]) => [(1 - level) / 2, (1 - level) / 2],
    ([[alive, plants], level]) => {
      const { lower, upper } = midPInterval(alive, plants, level);
      return `pbinom(${alive}, ${plants}, ${lower}, lower.tail = FALSE) + dbinom(${alive}, ${plants}, ${lower}) / 2, pbinom(${alive - 1}, ${plants}, ${upper}) + dbinom(${alive}, ${plants}, ${upper}) / 2`;
    },
  ),
  // Newcombe 1998b, method 10, from R's own score limits.
  witness(
    'Newcombe’s difference',
    fc.tuple(someOf(500), someOf(500)),
    ([[a, m], [b, n]]) => Object.values(newcombeDifference({ successes: a, plants: m }, { successes: b, plants: n })),
    ([[a, m], [b, n]]) => `local({ one <- ${wilsonInR(a, m)}; two <- ${wilsonInR(b, n)}; p <- ${a} / ${m}; q <- ${b} / ${n}
      c(p - q, p - q - sqrt((p - one[1])^2 + (two[2] - q)^2), p - q + sqrt((one[2] - p)^2 + (q - two[1])^2)) })`,
    // A score limit at 0 or 1 is rounding dust in R, and a root makes more of it.
    { within: 1e-8 },
  ),
  // A regression through 0 that weighs by 1/plants has the ratio for its slope; its residuals give the variance.
  witness(
    'the interval by donors',
    unalike,
    (outcomes) => {
      const { rate, standardError, lower, upper, designEffect } = donorRatioInterval(outcomes);
      return [rate, standardError, lower, upper, designEffect];
    },
    (outcomes) => `local({ y <- ${vector(outcomes.map((o) => o.successes))}; x <- ${vector(outcomes.map((o) => o.plants))}
      fit <- lm(y ~ 0 + x, weights = 1 / x); n <- length(x); p <- unname(coef(fit))
      se <- sqrt(var(residuals(fit) - mean(residuals(fit))) * n) / sum(x)
      at <- p + qt(c(0.025, 0.975), n - 1) * se
      c(p, se, max(0, at[1]), min(1, at[2]), se^2 / (p * (1 - p) / sum(x))) })`,
  ),
  witness(
    'overdispersion, chisq.test',
    unalike,
    (outcomes) => {
      const { factor, chance } = overdispersion(outcomes);
      return [factor, chance];
    },
    (outcomes) => `local({ s <- ${vector(outcomes.map((o) => o.successes))}; n <- ${vector(outcomes.map((o) => o.plants))}
      one <- suppressWarnings(chisq.test(cbind(s, n - s), correct = FALSE)); c(one$statistic / one$parameter, one$p.value) })`,
  ),
  witness(
    'the size of a sample, with and without a finite population',
    fc.tuple(share, fc.double({ min: 0.01, max: 0.5, noNaN: true }), fc.integer({ min: 1, max: 100_000 }), confidence),
    ([p, margin, population, level]) => [sampleSize(p, margin, undefined, level), sampleSize(p, margin, population, level)],
    ([p, margin, population, level]) => `local({ many <- qnorm((1 + ${level}) / 2)^2 * ${p} * (1 - ${p}) / ${margin}^2
      c(max(1, ceiling(many * (1 - 1e-12))), max(1, min(${population}, ceiling(many / (1 + (many - 1) / ${population}) * (1 - 1e-12))))) })`,
  ),
];

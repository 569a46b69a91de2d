import { fisherExact, holm, logisticRegression, mantelHaenszel, type LogisticRow, type TwoByTwo } from '@sprigline/domain';
import fc from 'fast-check';
import { vector } from './r.ts';
import { witness } from './witness.ts';

const cell = (most: number) => fc.integer({ min: 1, max: most });
const tableOf = (most: number): fc.Arbitrary<TwoByTwo> => fc.tuple(cell(most), cell(most), cell(most), cell(most)).map(([a, b, c, d]) => ({ first: { yes: a, no: b }, second: { yes: c, no: d } }));
const middling = fc.integer({ min: 4, max: 15 });
const columns = ({ first, second }: TwoByTwo): number[] => [first.yes, second.yes, first.no, second.no];
const matrix = (table: TwoByTwo): string => `matrix(${vector(columns(table))}, 2)`;

const CMH = { strata: fc.array(tableOf(60), { minLength: 2, maxLength: 12 }) };
const cmhInR = (strata: readonly TwoByTwo[], isCorrected: boolean): string =>
  `local({ one <- mantelhaen.test(array(${vector(strata.flatMap(columns))}, c(2, 2, ${strata.length})), correct = ${isCorrected ? 'TRUE' : 'FALSE'})
    c(one$statistic, one$p.value, one$estimate, one$conf.int) })`;

/** Odds with which R's hypergeometric distribution is weighed: what our limits must answer for. */
const leaning = (table: TwoByTwo): string => `m <- ${table.first.yes + table.first.no}; n <- ${table.second.yes + table.second.no}; k <- ${table.first.yes + table.second.yes}
  at <- max(0, k - n):min(m, k); d <- dhyper(at, m, n, k, log = TRUE)
  lean <- function(odds) { w <- d + at * log(odds); w <- exp(w - max(w)); w / sum(w) }`;

const rowsOf = fc.array(fc.record({ dose: fc.integer({ min: -3, max: 3 }), isLong: fc.constantFrom(0, 1), successes: cell(12), more: cell(12), cluster: fc.integer({ min: 1, max: 40 }) }), { minLength: 30, maxLength: 60 });
const told = (rows: readonly { dose: number; isLong: number; successes: number; more: number; cluster: number }[]): LogisticRow[] =>
  rows.map(({ dose, isLong, successes, more, cluster }) => ({ terms: [dose / 2, isLong], successes, plants: successes + more, cluster: `tree ${cluster}` }));

export const COMPARISONS = [
  witness('fisher.test, chance', tableOf(80), (table) => [fisherExact(table).chance], (table) => `fisher.test(${matrix(table)})$p.value`, { floor: 1e-200 }),
  // R looks for the odds ratio and its limits until they move by less than a ten-thousandth, so its own test comes near and its distribution proves ours.
  witness(
    'fisher.test, odds ratio and limits, nearly',
    fc.tuple(middling, middling, middling, middling).map(([a, b, c, d]): TwoByTwo => ({ first: { yes: a, no: b }, second: { yes: c, no: d } })),
    (table) => {
      const { oddsRatio, lower, upper } = fisherExact(table);
      return [oddsRatio, lower, upper].map(Math.log);
    },
    (table) => `local({ one <- fisher.test(${matrix(table)}); log(c(one$estimate, one$conf.int)) })`,
    { within: 2e-2 },
  ),
  witness(
    'the conditional odds ratio and its limits, at R’s distribution',
    fc.tuple(tableOf(300), fc.constantFrom(0.8, 0.95, 0.999)),
    ([table, level]) => [table.first.yes, (1 - level) / 2, (1 - level) / 2],
    ([table, level]) => {
      const { oddsRatio, lower, upper } = fisherExact(table, level);
      return `local({ ${leaning(table)}; x <- ${table.first.yes}; c(sum(at * lean(${oddsRatio})), sum(lean(${lower})[at >= x]), sum(lean(${upper})[at <= x])) })`;
    },
  ),
  witness(
    'mantelhaen.test with the correction',
    CMH.strata,
    (strata) => {
      const { chiSquare, chance, oddsRatio, lower = Number.NaN, upper = Number.NaN } = mantelHaenszel(strata);
      return [chiSquare, chance, oddsRatio, lower, upper];
    },
    (strata) => cmhInR(strata, true),
  ),
  witness(
    'mantelhaen.test without it',
    CMH.strata,
    (strata) => {
      const { chiSquare, chance, oddsRatio, lower = Number.NaN, upper = Number.NaN } = mantelHaenszel(strata, { isCorrected: false });
      return [chiSquare, chance, oddsRatio, lower, upper];
    },
    (strata) => cmhInR(strata, false),
  ),
  witness('p.adjust by Holm', fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 1, maxLength: 20 }), holm, (chances) => `p.adjust(${vector(chances)}, "holm")`),
  // The sandwich written out anew: bread from glm, meat from the scores added up by cluster.
  witness(
    'glm binomial: estimates, plain errors, deviance, and errors by cluster',
    rowsOf,
    (rows) => {
      const { terms, deviance } = logisticRegression(told(rows));
      return [...terms.map(({ estimate }) => estimate), ...terms.map(({ plainError }) => plainError), deviance, ...terms.map(({ standardError }) => standardError)];
    },
    (rows) => `local({ x <- cbind(1, ${vector(rows.map(({ dose }) => dose / 2))}, ${vector(rows.map(({ isLong }) => isLong))}); s <- ${vector(rows.map(({ successes }) => successes))}
      n <- s + ${vector(rows.map(({ more }) => more))}; id <- ${vector(rows.map(({ cluster }) => cluster))}
      fit <- glm(cbind(s, n - s) ~ 0 + x, family = binomial, control = glm.control(epsilon = 1e-14, maxit = 100)); p <- fitted(fit)
      bread <- vcov(fit); scores <- rowsum(x * (s - n * p), id); g <- nrow(scores); all <- sum(n)
      sandwich <- bread %*% crossprod(scores) %*% bread * g / (g - 1) * (all - 1) / (all - 3)
      unname(c(coef(fit), sqrt(diag(bread)), -2 * sum(s * log(p) + (n - s) * log(1 - p)), sqrt(diag(sandwich)))) })`,
    { within: 1e-7 },
  ),
];

import { betaBinomial, betaQuantile, betaShare, chanceOfNone, chiSquareTail, gammaTail, logBinomialMass, normalQuantile, normalTail, studentTQuantile, studentTTail } from '@sprigline/domain';
import fc from 'fast-check';
import { share, witness } from './witness.ts';

const TINY = { floor: 1e-280 };
const shape = fc.double({ min: -2, max: 4, noNaN: true }).map((log) => 10 ** log);
/** Chances down to a thousand-millionth, on either side. */
const extreme = fc.tuple(fc.double({ min: -9, max: -0.31, noNaN: true }), fc.boolean()).map(([log, isHigh]) => (isHigh ? 1 - 10 ** log : 10 ** log));
const size = fc.double({ min: -3, max: 3, noNaN: true }).map((log) => 10 ** log);

export const DISTRIBUTIONS = [
  witness('pnorm', fc.double({ min: -37, max: 37, noNaN: true }), (z) => [normalTail(z)], (z) => `pnorm(${z}, lower.tail = FALSE)`, TINY),
  witness('qnorm', extreme, (p) => [normalQuantile(p)], (p) => `qnorm(${p})`, { floor: 1e-9 }),
  witness('pbeta', fc.tuple(share, shape, shape), ([x, a, b]) => [betaShare(x, a, b)], ([x, a, b]) => `pbeta(${x}, ${a}, ${b})`, TINY),
  witness('qbeta', fc.tuple(extreme, shape.filter((a) => a > 0.1), shape.filter((b) => b > 0.1)), ([p, a, b]) => [betaShare(betaQuantile(p, a, b), a, b)], ([p]) => `${p} + 0`, { within: 1e-8 }),
  witness('qbeta where it promises ten digits', fc.tuple(share, fc.integer({ min: 1, max: 5_000 }), fc.integer({ min: 1, max: 5_000 })), ([p, a, b]) => [betaQuantile(p, a, b)], ([p, a, b]) => `qbeta(${p}, ${a}, ${b})`),
  witness('pgamma', fc.tuple(size, shape), ([x, a]) => [gammaTail(x * a, a)], ([x, a]) => `pgamma(${x * a}, ${a}, lower.tail = FALSE)`, { floor: 1e-200, within: 1e-8 }),
  witness('pchisq', fc.tuple(size, fc.integer({ min: 1, max: 200 })), ([x, df]) => [chiSquareTail(x, df)], ([x, df]) => `pchisq(${x}, ${df}, lower.tail = FALSE)`, TINY),
  witness('pt', fc.tuple(fc.double({ min: -50, max: 50, noNaN: true }), fc.integer({ min: 1, max: 500 })), ([t, df]) => [studentTTail(t, df)], ([t, df]) => `pt(${t}, ${df}, lower.tail = FALSE)`, TINY),
  witness('qt', fc.tuple(extreme, fc.integer({ min: 1, max: 100_000 })), ([p, df]) => [studentTQuantile(p, df)], ([p, df]) => `qt(${p}, ${df})`, { within: 1e-8 }),
  witness(
    'dbinom',
    fc.integer({ min: 1, max: 1_000_000 }).chain((n) => fc.tuple(fc.integer({ min: 0, max: n }), fc.constant(n), share)),
    ([k, n, p]) => [logBinomialMass(k, n, p)],
    ([k, n, p]) => `dbinom(${k}, ${n}, ${p}, log = TRUE)`,
  ),
  witness(
    'the beta-binomial, by its beta functions',
    fc.tuple(fc.integer({ min: 1, max: 60 }), share, fc.double({ min: 0.01, max: 0.95, noNaN: true })),
    ([n, mean, likeness]) => betaBinomial(n, { mean, likeness }),
    ([n, mean, likeness]) => `local({ a <- ${mean} * (1 / ${likeness} - 1); b <- (1 - ${mean}) * (1 / ${likeness} - 1); exp(lchoose(${n}, 0:${n}) + lbeta(0:${n} + a, ${n}:0 + b) - lbeta(a, b)) })`,
  ),
  // The closed form for many plants beside the product that it stands for.
  witness(
    'none of many plants of a tree',
    fc.tuple(fc.integer({ min: 10_001, max: 200_000 }), share, fc.double({ min: 1e-6, max: 0.95, noNaN: true })),
    ([n, mean, likeness]) => [chanceOfNone(n, { mean, likeness })],
    ([n, mean, likeness]) => `local({ s <- 1 / ${likeness} - 1; exp(sum(log1p(-${mean} * s / (s + 0:${n - 1})))) })`,
    { floor: 1e-200, within: 1e-8 },
  ),
];

import { alleleCapture, chao1, donorsForCapture, donorsPlanted, heterozygosityKept, hillNumber, planOf, propagulesNeeded, rarefiedDonors, statusNumber } from '@sprigline/domain';
import fc from 'fast-check';
import { vector } from './r.ts';
import { share, witness } from './witness.ts';

const bench = fc.array(fc.integer({ min: 1, max: 200 }), { minLength: 1, maxLength: 60 });
const likeness = fc.double({ min: 0.01, max: 0.6, noNaN: true });
const rarefiedInR = (counts: readonly number[], taken: number): string => `local({ n <- ${vector(counts)}; sum(phyper(0, n, sum(n) - n, ${taken}, lower.tail = FALSE)) })`;

export const DIVERSITY = [
  witness(
    'Hill numbers',
    fc.tuple(bench, fc.double({ min: 0, max: 5, noNaN: true })),
    ([counts, order]) => [hillNumber(counts, 1), hillNumber(counts, 2), hillNumber(counts, order)],
    ([counts, order]) => `local({ p <- prop.table(${vector(counts)}); c(exp(-sum(p * log(p))), 1 / sum(p^2), sum(p^${order})^(1 / (1 - ${order}))) })`,
    { within: 1e-8 },
  ),
  witness('rarefaction, phyper', fc.tuple(bench, share), ([counts, part]) => [rarefiedDonors(counts, Math.ceil(counts.reduce((a, b) => a + b) * part))], ([counts, part]) => rarefiedInR(counts, Math.ceil(counts.reduce((a, b) => a + b) * part))),
  witness('rarefaction of very many', fc.tuple(fc.integer({ min: 100_001, max: 900_000 }), fc.integer({ min: 100_001, max: 900_000 })), ([plants, taken]) => [rarefiedDonors([plants, 1e9], taken)], ([plants, taken]) => rarefiedInR([plants, 1e9], taken)),
  witness('allele capture, pbinom', fc.tuple(fc.integer({ min: 0, max: 300 }), share), ([donors, p]) => [alleleCapture(donors, p)], ([donors, p]) => `pbinom(0, ${2 * donors}, ${p}, lower.tail = FALSE)`),
  witness('donors for a chance, qgeom', fc.tuple(share, share), ([chance, p]) => [donorsForCapture(chance, p).copies], ([chance, p]) => `qgeom(${chance}, ${p}) + 1`),
  witness('heterozygosity kept', fc.tuple(fc.double({ min: 0.5, max: 1_000, noNaN: true }), fc.integer({ min: 0, max: 100 })), ([size, generations]) => [heterozygosityKept(size, generations)], ([size, generations]) => `(1 - 1 / (2 * ${size}))^${generations}`),
  witness(
    'the status number, by its matrix',
    fc.array(fc.integer({ min: 1, max: 50 }), { minLength: 2, maxLength: 10 }).chain((plants) => fc.tuple(fc.constant(plants), fc.array(fc.constantFrom(0, 1 / 8, 1 / 4), { minLength: 100, maxLength: 100 }))),
    ([plants, theta]) => [statusNumber(plants, (i, j) => theta[Math.min(i, j) * 10 + Math.max(i, j)]!).status],
    ([plants, theta]) => {
      const matrix = plants.flatMap((_, i) => plants.map((_n, j) => (i === j ? 0.5 : theta[Math.min(i, j) * 10 + Math.max(i, j)]!)));
      return `local({ p <- prop.table(${vector(plants)}); drop(1 / (2 * p %*% matrix(${vector(matrix)}, ${plants.length}) %*% p)) })`;
    },
  ),
  witness('Chao1', fc.array(fc.integer({ min: 0, max: 6 }), { minLength: 1, maxLength: 40 }).filter((counts) => counts.some((n) => n > 0)), (counts) => [chao1(counts).atLeast], (counts) => `local({ n <- ${vector(counts)}; one <- sum(n == 1); two <- sum(n == 2); sum(n > 0) + (sum(n) - 1) / sum(n) * (if (two > 0) one^2 / (2 * two) else one * (one - 1) / 2) })`),
  witness(
    'donors that reach the site, by lbeta',
    fc.array(fc.tuple(fc.integer({ min: 0, max: 60 }), share, likeness), { minLength: 1, maxLength: 8 }),
    (donors) => [donorsPlanted(donors.map(([plants, mean, likeness]) => ({ lots: [{ plants, chance: { mean, likeness } }] })))],
    (donors) => `local({ n <- ${vector(donors.map(([n]) => n))}; m <- ${vector(donors.map(([, mean]) => mean))}; s <- 1 / ${vector(donors.map(([, , likeness]) => likeness))} - 1
      sum(1 - exp(lbeta(m * s, (1 - m) * s + n) - lbeta(m * s, (1 - m) * s))) })`,
  ),
  witness(
    'propagules, rounded once and at each stage',
    fc.tuple(fc.integer({ min: 1, max: 5_000 }), fc.array(fc.integer({ min: 5, max: 100 }).map((percent) => percent / 100), { minLength: 1, maxLength: 5 })),
    ([target, rates]) => [propagulesNeeded(target, rates, 'once'), propagulesNeeded(target, rates, 'each-stage')],
    ([target, rates]) => `c(ceiling(${target} / prod(${vector(rates)}) * (1 - 1e-12)), Reduce(function(n, r) ceiling(n / r * (1 - 1e-12)), rev(${vector(rates)}), ${target}))`,
  ),
  // The whole joint distribution of plants and of trees that arrive, tree by tree, where ours goes by how many trees arrive.
  witness(
    'the chance of a sticking plan, by the joint distribution',
    fc.tuple(fc.integer({ min: 0, max: 30 }), fc.integer({ min: 0, max: 5 }), fc.integer({ min: 5, max: 8 }), fc.integer({ min: 1, max: 10 }), share, likeness),
    ([plants, donors, trees, each, mean, likeness]) => [planOf({ plants, donors }, trees, { mean, likeness }, each).chance],
    ([plants, donors, trees, each, mean, likeness]) => `local({ a <- ${mean} * (1 / ${likeness} - 1); b <- (1 - ${mean}) * (1 / ${likeness} - 1); k <- 0:${each}
      one <- exp(lchoose(${each}, k) + lbeta(k + a, ${each} - k + b) - lbeta(a, b)); J <- matrix(0, ${trees + 1}, ${trees * each + 1}); J[1, 1] <- 1
      for (tree in 1:${trees}) { M <- J * one[1]; for (n in 1:${each}) M[-1, (n + 1):ncol(J)] <- M[-1, (n + 1):ncol(J)] + J[-nrow(J), 1:(ncol(J) - n)] * one[n + 1]; J <- M }
      sum(J[0:${trees} >= ${donors}, 0:${trees * each} >= ${plants}]) })`,
  ),
];

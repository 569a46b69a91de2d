import { kaplanMeier, logRank, stateOccupancy, turnbull, type Followed } from '@sprigline/domain';
import fc from 'fast-check';
import { vector } from './r.ts';
import { witness } from './witness.ts';

// R's package `survival` is not in WebAssembly's R: each curve is written out in R from its definition, time by time, with no sums carried along.
const lot = fc.record({ from: fc.constantFrom(0, 0, 0, 2, 5), stays: fc.integer({ min: 1, max: 25 }), plants: fc.integer({ min: 1, max: 9 }), happened: fc.boolean() });
const lots = fc.array(lot, { minLength: 3, maxLength: 40 }).map((all) => [{ from: 0, stays: 30, plants: 2, happened: false }, { from: 0, stays: 3, plants: 1, happened: true }, ...all]);
type Lots = readonly { from: number; stays: number; plants: number; happened: boolean }[];
const followed = (all: Lots): Followed[] => all.map(({ from, stays, plants, happened }) => ({ from, until: from + stays, plants, happened }));
const inR = (all: Lots): string => `from <- ${vector(all.map(({ from }) => from))}; to <- ${vector(all.map(({ from, stays }) => from + stays))}; w <- ${vector(all.map(({ plants }) => plants))}; hit <- ${vector(all.map(({ happened }) => Number(happened)))}`;
const CURVE = `t <- sort(unique(to[hit == 1])); Y <- sapply(t, function(u) sum(w[from < u & to >= u])); N <- sapply(t, function(u) sum(w[to == u & hit == 1]))`;

const ends = fc.array(fc.record({ until: fc.integer({ min: 1, max: 20 }), plants: fc.integer({ min: 1, max: 9 }), to: fc.constantFrom('rooted', 'lost', undefined), more: fc.integer({ min: 1, max: 9 }), isLostLater: fc.boolean() }), { minLength: 3, maxLength: 25 });
const STATES = ['cutting', 'rooted', 'lost'] as const;
type State = (typeof STATES)[number];
const looks = fc.array(fc.tuple(fc.nat(20), fc.integer({ min: 1, max: 9 }), fc.boolean(), fc.integer({ min: 1, max: 5 })), { minLength: 2, maxLength: 40 })
  .map((all) => all.map(([after, more, isOpen, plants]) => ({ after, by: isOpen ? Number.POSITIVE_INFINITY : after + more, plants })));

export const CURVES = [
  witness(
    'Kaplan-Meier with Greenwood, with log-log limits, and late entry',
    lots,
    (all) => kaplanMeier(followed(all)).steps.filter(({ events }) => events > 0).flatMap(({ atRisk, surviving, standardError, lower = 0, upper = 0 }) => [atRisk, surviving, standardError, lower, upper]),
    (all) => `local({ ${inR(all)}; ${CURVE}; S <- cumprod(1 - N / Y); g <- cumsum(N / (Y * (Y - N))); left <- S > 1e-12
      se <- ifelse(left, S * sqrt(g), 0); th <- exp(qnorm(0.975) * sqrt(g) / log(S))
      c(rbind(Y, S, se, ifelse(left, S^(1 / th), 0), ifelse(left, S^th, 0))) })`,
  ),
  witness(
    'the log-rank test of three groups in two strata',
    fc.array(lots, { minLength: 6, maxLength: 6 }).map((groups) => groups.map((all, at) => [{ from: 0, stays: 1 + at, plants: 2, happened: true }, ...all])),
    (groups) => {
      const { chiSquare, chance, groups: told } = logRank([groups.slice(0, 3).map(followed), groups.slice(3).map(followed)]);
      return [chiSquare, chance, ...told.flatMap(({ observed, expected }) => [observed, expected])];
    },
    (groups) => `local({ O <- E <- numeric(3); V <- matrix(0, 3, 3)
      for (s in 0:1) { d <- list(${groups.map((all) => `local({ ${inR(all)}; list(from = from, to = to, w = w, hit = hit) })`).join(', ')})[1:3 + 3 * s]
        for (u in sort(unique(unlist(lapply(d, function(g) g$to[g$hit == 1]))))) {
          y <- sapply(d, function(g) sum(g$w[g$from < u & g$to >= u])); e <- sapply(d, function(g) sum(g$w[g$to == u & g$hit == 1])); Y <- sum(y); D <- sum(e)
          O <- O + e; E <- E + D * y / Y; if (Y > 1) V <- V + D * (Y - D) / (Y - 1) * (diag(y / Y) - outer(y / Y, y / Y)) } }
      chi <- drop((O - E)[1:2] %*% solve(V[1:2, 1:2], (O - E)[1:2])); c(chi, pchisq(chi, 2, lower.tail = FALSE), rbind(O, E)) })`,
    { within: 1e-8 },
  ),
  // Greenwood's kind for the whole matrix of transition chances (Andersen et al. 1993, 4.4.20): nine by nine, where ours carries three by three.
  witness(
    'Aalen-Johansen through two stages, with its errors',
    ends,
    (lots) => {
      const first = lots.map(({ until, plants, to }) => ({ state: 'cutting' as State, from: 0, until, plants, ...(to ? { to: to as State } : {}) }));
      const then = lots.filter(({ to }) => to === 'rooted').map(({ until, plants, more, isLostLater }) => ({ state: 'rooted' as State, from: until, until: until + more, plants, ...(isLostLater ? { to: 'lost' as State } : {}) }));
      return stateOccupancy<State>([...first, ...then], STATES).flatMap(({ shares, standardErrors }) => [...shares, ...standardErrors]);
    },
    (lots) => `local({ u <- ${vector(lots.map(({ until }) => until))}; w <- ${vector(lots.map(({ plants }) => plants))}; k <- ${vector(lots.map(({ to }) => (to === 'rooted' ? 1 : to === 'lost' ? 2 : 0)))}
      v <- u + ${vector(lots.map(({ more }) => more))}; z <- ${vector(lots.map(({ isLostLater }) => Number(isLostLater)))}; r <- k == 1; I <- diag(3); P <- I; C <- matrix(0, 9, 9); out <- c()
      for (t in sort(unique(c(u[k > 0], v[r & z == 1])))) { Y <- c(sum(w[u >= t]), sum(w[r & u < t & v >= t]), 0); N <- matrix(0, 3, 3)
        N[1, 2] <- sum(w[u == t & k == 1]); N[1, 3] <- sum(w[u == t & k == 2]); N[2, 3] <- sum(w[r & v == t & z == 1])
        A <- matrix(0, 3, 3); G <- matrix(0, 9, 9)
        for (h in 1:3) if (Y[h] > 0) { A[h, ] <- N[h, ] / Y[h]; A[h, h] <- -sum(N[h, ]) / Y[h]; q <- A[h, ]; q[h] <- 1 + q[h]
          at <- h + 3 * (0:2); G[at, at] <- (diag(q) - outer(q, q)) / Y[h] }
        left <- kronecker(t(I + A), I); right <- kronecker(I, P); C <- left %*% C %*% t(left) + right %*% G %*% t(right); P <- P %*% (I + A)
        out <- c(out, P[1, ], sqrt(pmax(0, diag(C)[c(1, 4, 7)]))) }
      out })`,
    { within: 1e-7 },
  ),
  // No shares are better if no region pulls harder than its weight: asked in R with the whole matrix of who may lie where.
  witness(
    'Turnbull’s estimate is the best there is',
    looks.filter((seen) => seen.some(({ by }) => by < Number.POSITIVE_INFINITY)),
    (seen) => [1, turnbull(seen).isConverged ? 1 : 0],
    (seen) => {
      const { regions } = turnbull(seen);
      const finite = (time: number): number => (time === Number.POSITIVE_INFINITY ? 1e9 : time);
      return `local({ L <- ${vector(seen.map(({ after }) => after))}; R <- ${vector(seen.map(({ by }) => finite(by)))}; w <- ${vector(seen.map(({ plants }) => plants))}
        a <- sort(unique(L)); b <- sapply(a, function(x) min(R[R > x])); keep <- !sapply(seq_along(a), function(i) any(a > a[i] & a < b[i])); a <- a[keep]; b <- b[keep]
        p <- numeric(length(a)); p[match(${vector(regions.map(({ after }) => after))}, a)] <- ${vector(regions.map(({ share }) => share))}
        inside <- outer(L, a, "<=") & outer(R, b, ">="); pull <- colSums(inside * w / drop(inside %*% p)) / sum(w); c(max(pull, sum(p)), 1) })`;
    },
    { within: 1e-6 },
  ),
];

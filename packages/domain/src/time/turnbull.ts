import { DomainError } from '../errors.ts';
import { refuseUnlessPlants } from './followed.ts';
import { pooledSteps } from './pooled-steps.ts';

/** Plants to which it happened after `after` and at `by` at the latest; `by` is infinite while it has not. */
export interface Between {
  readonly after: number;
  readonly by: number;
  /** How many, above 0. */
  readonly plants: number;
}

/** A region that gets a share of all. Where in it the share lies, no data can say. */
export interface TurnbullRegion {
  readonly after: number;
  readonly by: number;
  readonly share: number;
}

export interface Turnbull {
  /** In order of time; shares add up to 1. Regions without a share are left out. */
  readonly regions: readonly TurnbullRegion[];
  readonly isConverged: boolean;
  readonly iterations: number;
  /** By how much the average log likelihood could still rise at most; at the optimum 0. */
  readonly gap: number;
}

const ENOUGH = 1e-9;
const NEXT_TO_NOTHING = 1e-5;

/**
 * Turnbull's estimate: when something happened to how many, if each was only seen before and after.
 *
 * The curve is known between regions, not within them: there it is not unique, and a picture should leave it open.
 *
 * Time and memory of a round grow with the number of distinct intervals.
 *
 * @param seen counts as weights
 * @param mostRounds rounds before it is said not to have converged
 * @throws DomainError `survival/no-plants`; `survival/not-a-time` unless 0 <= after < by; `survival/not-a-count`
 *
 * Source: Turnbull BW (1976) J. R. Stat. Soc. B 38:290-295; Peto R (1973) Appl. Stat. 22:86-91; found as Wellner JA, Zhan Y (1997) J. Am. Stat. Assoc.
 * 92:945-959; bound on the gap from the
 * directional derivative, Gentleman R, Geyer CJ (1994) Biometrika 81:618-623; from memory.
 */
export function turnbull(seen: readonly Between[], mostRounds = 20_000): Turnbull {
  refuseUnfit(seen);
  const regions = innermost(seen);
  const spans = seen.map(({ after, by, plants }) => ({ first: firstFrom(regions, after), last: lastUpTo(regions, by), plants }));
  const total = seen.reduce((sum, { plants }) => sum + plants, 0);

  let shares = regions.map(() => 1 / regions.length);
  for (let iterations = 0; ; iterations += 1) {
    const pull = pullOf(spans, shares, total);
    const gap = pull.reduce((most, value) => Math.max(most, value), 0) - 1;
    if (gap < ENOUGH || iterations >= mostRounds) {
      // EM comes near to nothing and never arrives: what is next to nothing and still wants less has no share.
      const kept = regions.flatMap(({ after, by }, at) => (shares[at]! > NEXT_TO_NOTHING || pull[at]! > 1 - NEXT_TO_NOTHING ? [{ after, by, share: shares[at]! }] : []));
      const all = kept.reduce((sum, { share }) => sum + share, 0);
      return { regions: kept.map((region) => ({ ...region, share: region.share / all })), isConverged: gap < ENOUGH, iterations, gap: Math.max(0, gap) };
    }
    shares = risen(spans, shares.map((share, at) => share * pull[at]!));
  }
}

/**
 * A step of the iterative convex minorant after each of EM: Newton's step for each point of the curve by itself, made to rise again,
 * and halved until the likelihood has not fallen. EM alone needs tens of thousands of rounds for a few thousand intervals.
 */
function risen(spans: readonly Span[], shares: readonly number[]): number[] {
  const upTo = runningSums(shares);
  const last = upTo.length - 1;
  const [slope, bend] = [upTo.map(() => 0), upTo.map(() => 0)];
  for (const { first, last: end, plants } of spans) {
    const held = Math.max(upTo[end + 1]! - upTo[first]!, 1e-300);
    const [rise, curve] = [plants / held, plants / held / held];
    slope[end + 1]! += rise;
    slope[first]! -= rise;
    bend[end + 1]! += curve;
    bend[first]! += curve;
  }
  const inner = upTo.slice(1, last).map((value, at) => value + slope[at + 1]! / bend[at + 1]!);
  const target = [0, ...pooledSteps(inner, bend.slice(1, last)).map((value) => Math.min(1, Math.max(0, value))), 1];
  const before = likelihoodOf(spans, upTo);
  for (let part = 1; part > 1e-4; part /= 2) {
    const to = upTo.map((value, at) => value + part * (target[at]! - value));
    if (likelihoodOf(spans, to) > before) return shares.map((_, at) => Math.max(0, to[at + 1]! - to[at]!));
  }
  return [...shares];
}

const likelihoodOf = (spans: readonly Span[], upTo: readonly number[]): number => spans.reduce((sum, { first, last, plants }) => sum + plants * Math.log(Math.max(0, upTo[last + 1]! - upTo[first]!)), 0);

function runningSums(shares: readonly number[]): number[] {
  const upTo = [0];
  for (const share of shares) upTo.push(upTo.at(-1)! + share);
  return upTo;
}

interface Span {
  readonly first: number;
  readonly last: number;
  readonly plants: number;
}

/** How much each region's share should be multiplied by: above 1 where the data want more. By running sums, since spans have no holes. */
function pullOf(spans: readonly Span[], shares: readonly number[], total: number): number[] {
  const upTo = runningSums(shares);
  const rise = shares.map(() => 0);
  rise.push(0);
  for (const { first, last, plants } of spans) {
    const held = upTo[last + 1]! - upTo[first]!;
    const each = plants / Math.max(held, 1e-300) / total;
    rise[first]! += each;
    rise[last + 1]! -= each;
  }
  let running = 0;
  return shares.map((_, at) => (running += rise[at]!));
}

/** From an `after` to the nearest `by` with no other end between: only there can mass lie (Turnbull 1976). */
function innermost(seen: readonly Between[]): { after: number; by: number }[] {
  // At one time an end comes before a beginning: (1, 2] and (2, 3] have nothing in common.
  const ends = [...new Set(seen.map(({ after }) => after))].map((time) => ({ time, isAfter: true })).concat([...new Set(seen.map(({ by }) => by))].map((time) => ({ time, isAfter: false })));
  ends.sort((a, b) => a.time - b.time || Number(a.isAfter) - Number(b.isAfter));
  return ends.flatMap(({ time, isAfter }, at) => (isAfter && ends[at + 1]?.isAfter === false ? [{ after: time, by: ends[at + 1]!.time }] : []));
}

const firstFrom = (regions: readonly { after: number }[], after: number): number => search(regions.length, (at) => regions[at]!.after >= after);
const lastUpTo = (regions: readonly { by: number }[], by: number): number => search(regions.length, (at) => regions[at]!.by > by) - 1;

/** First index that holds; `length` where none does. */
function search(length: number, holds: (at: number) => boolean): number {
  let [low, high] = [0, length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (holds(middle)) high = middle;
    else low = middle + 1;
  }
  return low;
}

function refuseUnfit(seen: readonly Between[]): void {
  if (seen.length === 0) throw new DomainError('survival/no-plants', 'a curve needs at least one plant');
  for (const { after, by, plants } of seen) {
    if (!(after >= 0 && by > after)) throw new DomainError('survival/not-a-time', 'something happens after one look and by a later one', { after, by });
    refuseUnlessPlants(plants);
  }
}

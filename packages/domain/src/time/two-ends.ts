import { DomainError } from '../errors.ts';

/** Plants that ended in one of two ways, each after one time and by another; or for which neither has been seen. */
export type TwoEnded =
  | { readonly end: 'first' | 'second'; readonly after: number; readonly by: number; readonly plants: number }
  /** Had not met the first end at `after`, nor the second at `notSecondAt`, and nobody has seen either since. */
  | { readonly end?: undefined; readonly after: number; readonly notSecondAt: number; readonly plants: number };

/** A region that gets a share of all; where in it the share lies, no data can say. */
export interface EndRegion {
  readonly after: number;
  readonly by: number;
  readonly share: number;
}

export interface TwoEnds {
  readonly first: readonly EndRegion[];
  readonly second: readonly EndRegion[];
  /** Met neither as far as anybody can see. With all the regions it adds up to 1. */
  readonly neither: number;
  readonly isConverged: boolean;
  readonly iterations: number;
}

/** At this the log likelihood of a thousand plants could still rise by a hundredth. */
const ENOUGH = 1e-5;

/**
 * How many met which of two competing ends when, if each was only seen before and after.
 *
 * Turnbull's estimate with two ends: a plant that is still waiting may have met the first since it was last looked at for
 * that, and not the second since it was last seen alive, so looks for the one need not be looks for the other.
 * The work of a round grows with the distinct rows.
 *
 * @param seen counts as weights, each above 0
 * @param mostRounds rounds of the EM algorithm before it is said not to have converged
 * @throws DomainError `survival/no-plants`; `survival/not-a-time` unless 0 <= after < by; `survival/not-a-count`
 *
 * Source: Hudgens MG, Satten GA, Longini IM (2001) Biometrics 57:74-80; from memory.
 */
export function twoEnds(seen: readonly TwoEnded[], mostRounds = 2_000): TwoEnds {
  refuseUnfit(seen);
  const regions = { first: innermost(seen, 'first'), second: innermost(seen, 'second') };
  const [firsts, seconds] = [regions.first.length, regions.second.length];
  // All regions in one list: the first end, then the second, then neither.
  const spans = seen.map((row) => ({ plants: row.plants, parts: partsOf(row, regions) }));
  const total = seen.reduce((sum, { plants }) => sum + plants, 0);
  let shares = Array.from({ length: firsts + seconds + 1 }, () => 1 / (firsts + seconds + 1));
  for (let iterations = 0; ; iterations += 1) {
    const pull = pullOf(spans, shares, total);
    const gap = Math.max(...pull) - 1;
    if (gap < ENOUGH || iterations >= mostRounds) {
      const told = (at: number, { after, by }: { after: number; by: number }) => ({ after, by, share: shares[at] ?? 0 });
      return {
        first: regions.first.map((region, at) => told(at, region)).filter(({ share }) => share > 1e-9),
        second: regions.second.map((region, at) => told(firsts + at, region)).filter(({ share }) => share > 1e-9),
        neither: shares.at(-1) ?? 0, isConverged: gap < ENOUGH, iterations,
      };
    }
    shares = shares.map((share, at) => share * (pull[at] ?? 0));
  }
}

/** From the first to the last region, both included. */
type Part = readonly [from: number, to: number];

function partsOf(row: TwoEnded, { first, second }: Record<'first' | 'second', readonly { after: number; by: number }[]>): Part[] {
  const neither = first.length + second.length;
  if (row.end === 'first') return [[countOf(first, ({ after }) => after < row.after), countOf(first, ({ by }) => by <= row.by) - 1]];
  if (row.end !== undefined) return [[first.length + countOf(second, ({ after }) => after < row.after), first.length + countOf(second, ({ by }) => by <= row.by) - 1]];
  const late: Part[] = [[countOf(first, ({ after }) => after < row.after), first.length - 1], [first.length + countOf(second, ({ after }) => after < row.notSecondAt), neither]];
  return late.filter(([from, to]) => from <= to);
}

/** How much each region's share should be multiplied by: above 1 where the data want more. */
function pullOf(spans: readonly { plants: number; parts: readonly Part[] }[], shares: readonly number[], total: number): number[] {
  const upTo = [0];
  for (const share of shares) upTo.push((upTo.at(-1) ?? 0) + share);
  const rise = Array.from({ length: shares.length + 1 }, () => 0);
  for (const { plants, parts } of spans) {
    const held = parts.reduce((sum, [from, to]) => sum + upTo[to + 1]! - upTo[from]!, 0);
    const each = plants / Math.max(held, 1e-300) / total;
    for (const [from, to] of parts) {
      rise[from]! += each;
      rise[to + 1]! -= each;
    }
  }
  let running = 0;
  return shares.map((_, at) => (running += rise[at]!));
}

/** From a last look without it to the nearest look with it, with no other between: only there can a share lie. */
function innermost(seen: readonly TwoEnded[], end: 'first' | 'second'): { after: number; by: number }[] {
  const afterOf = (row: TwoEnded): number[] => {
    if (row.end !== undefined) return row.end === end ? [row.after] : [];
    return [end === 'first' ? row.after : row.notSecondAt];
  };
  const afters = new Set(seen.flatMap(afterOf));
  const bys = new Set(seen.flatMap((row) => (row.end === end ? [row.by] : [])));
  const ends = [...[...afters].map((time) => ({ time, isAfter: true })), ...[...bys].map((time) => ({ time, isAfter: false }))];
  ends.sort((a, b) => a.time - b.time || Number(a.isAfter) - Number(b.isAfter));
  return ends.flatMap(({ time, isAfter }, at) => (isAfter && ends[at + 1]?.isAfter === false ? [{ after: time, by: ends[at + 1]!.time }] : []));
}

/** How many hold; those that hold come first. */
const countOf = <T>(list: readonly T[], holds: (one: T) => boolean): number => {
  const first = list.findIndex((one) => !holds(one));
  return first < 0 ? list.length : first;
};

function refuseUnfit(seen: readonly TwoEnded[]): void {
  if (seen.length === 0) throw new DomainError('survival/no-plants', 'a curve needs at least one plant');
  for (const row of seen) {
    const isInOrder = row.after >= 0 && (row.end === undefined ? row.notSecondAt >= row.after : row.by > row.after);
    if (!isInOrder) throw new DomainError('survival/not-a-time', 'something happens after one look and by a later one', { after: row.after });
    if (!(row.plants > 0 && row.plants < Number.POSITIVE_INFINITY)) throw new DomainError('survival/not-a-count', 'a number of plants is above 0', { plants: row.plants });
  }
}

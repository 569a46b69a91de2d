import type { Between, Followed, StateStay } from '@sprigline/domain';

// The plainest ways to the same curves: no errors, no limits, no refusals. What ours cost more is the price of those.

export function kaplanMeierByTheBook(followed: readonly Followed[]): number[] {
  const sorted = followed.toSorted((one, other) => one.until - other.until);
  let left = sorted.reduce((sum, { plants }) => sum + plants, 0);
  let surviving = 1;
  return sorted.map(({ plants, happened }) => {
    if (happened) surviving *= 1 - plants / left;
    left -= plants;
    return surviving;
  });
}

export function occupancyByTheBook(stays: readonly StateStay<string>[]): [number, number, number][] {
  const sorted = stays.toSorted((one, other) => one.until - other.until);
  let left = sorted.reduce((sum, { plants }) => sum + plants, 0);
  let [here, rooted, lost] = [1, 0, 0];
  return sorted.map(({ plants, to }) => {
    const gone = (here * plants) / left;
    if (to !== undefined) here -= gone;
    if (to === 'rooted') rooted += gone;
    if (to === 'lost') lost += gone;
    left -= plants;
    return [here, rooted, lost];
  });
}

/** Rounds of Turnbull's own algorithm. @returns by how much the average log likelihood could still rise at most */
export function emByTheBook(seen: readonly Between[], rounds: number): number {
  const [afters, ends] = [[...new Set(seen.map(({ after }) => after))].sort((a, b) => a - b), [...new Set(seen.map(({ by }) => by))].sort((a, b) => a - b)];
  const regions = afters.flatMap((after, at) => {
    const by = ends.find((end) => end > after);
    return by === undefined || (afters[at + 1] ?? Number.POSITIVE_INFINITY) < by ? [] : [{ after, by }];
  });
  const first = seen.map(({ after }) => regions.findIndex((region) => region.after >= after));
  const last = seen.map(({ by }) => regions.findLastIndex((region) => region.by <= by));
  let shares = regions.map(() => 1 / regions.length);
  for (let round = 0; ; round += 1) {
    const upTo = [0];
    for (const share of shares) upTo.push(upTo.at(-1)! + share);
    const rise = new Float64Array(regions.length + 1);
    for (const [at, { plants }] of seen.entries()) {
      const each = plants / (upTo[last[at]! + 1]! - upTo[first[at]!]!) / seen.length;
      rise[first[at]!]! += each;
      rise[last[at]! + 1]! -= each;
    }
    let running = 0;
    const pull = shares.map((_, at) => (running += rise[at]!));
    if (round === rounds) return pull.reduce((a, b) => Math.max(a, b)) - 1;
    shares = shares.map((share, at) => share * pull[at]!);
  }
}

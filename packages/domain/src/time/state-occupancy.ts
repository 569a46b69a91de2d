import { DomainError } from '../errors.ts';
import { refuseUnlessPlants } from './followed.ts';

/** Plants that did the same: were in `state` from `from`, and at `until` went on to `to` or were last seen there. */
export interface Stay<State extends string> {
  readonly state: State;
  readonly from: number;
  readonly until: number;
  /** Left out: last seen in `state`. */
  readonly to?: State;
  /** How many, above 0. */
  readonly plants: number;
}

/** Shares of a cohort at one time, in the order of the states asked for. */
export interface Occupancy {
  readonly time: number;
  /** Add up to 1. */
  readonly shares: readonly number[];
  readonly standardErrors: readonly number[];
  /** Plants watched in each state just before this time. */
  readonly atRisk: readonly number[];
}

/**
 * Aalen-Johansen: the share of a cohort in each state over time, though many are still watched.
 *
 * States may be anything a plant goes through (cutting, rooted, liner, potted, planted, lost); with one state to be in
 * and several to end in, the shares of the ends are cumulative incidences with competing ends.
 * Time is since sticking for all states, so that nothing has to be assumed of how they follow each other but
 * that a plant's past does not matter beside the state it is in.
 *
 * Work grows with times x states^2, memory with times x states.
 *
 * @param stays in any order; counts as weights; who is received late begins with a later `from`
 * @param states all states; everybody begins in the first
 * @throws DomainError `survival/no-plants`, `survival/not-a-time`, `survival/not-a-count`; `survival/not-a-state` for one not listed
 *
 * Source: Aalen OO, Johansen S (1978) Scand. J. Stat. 5:141-150; standard errors as Andersen PK, Borgan O, Gill RD,
 * Keiding N (1993) Statistical Models Based on Counting Processes, IV.4.1.3 (Greenwood's kind); from memory.
 */
export function stateOccupancy<State extends string>(stays: readonly Stay<State>[], states: readonly State[]): Occupancy[] {
  if (stays.length === 0) throw new DomainError('survival/no-plants', 'a curve needs at least one plant');
  const times = changesByTime(stays, states);
  const watched = states.map(() => 0);
  let shares: number[] = states.map((_, at) => (at === 0 ? 1 : 0));
  let covariance: number[][] = states.map(() => states.map(() => 0));
  const curve: Occupancy[] = [];
  for (const [time, { entered, left, moved }] of [...times].sort(([a], [b]) => a - b)) {
    if (moved.some((row) => row.some((n) => n > 0))) {
      // Who leaves was watched, whatever dust sums of shares leave behind.
      const atRisk = watched.map((n, state) => Math.max(n, left[state]!));
      covariance = nextCovariance(covariance, shares, atRisk, moved);
      shares = states.map((_, to) => shares.reduce((sum, share, from) => sum + share * stepShare(atRisk, moved, from, to), 0));
      curve.push({ time, shares, standardErrors: covariance.map((row, at) => Math.sqrt(Math.max(0, row[at]!))), atRisk });
    }
    for (const at of watched.keys()) watched[at]! += entered[at]! - left[at]!;
  }
  return curve;
}

interface Changes {
  /** Plants that come under watch in a state, by state. */
  readonly entered: number[];
  readonly left: number[];
  /** From state to state. */
  readonly moved: number[][];
}

function changesByTime<State extends string>(stays: readonly Stay<State>[], states: readonly State[]): Map<number, Changes> {
  const indexOf = new Map(states.map((state, at) => [state, at]));
  const at = (state: State): number => {
    const index = indexOf.get(state);
    if (index === undefined) throw new DomainError('survival/not-a-state', 'a state is one of those asked for', { state });
    return index;
  };
  const times = new Map<number, Changes>();
  const of = (time: number): Changes => {
    const known = times.get(time);
    if (known) return known;
    const made = { entered: states.map(() => 0), left: states.map(() => 0), moved: states.map(() => states.map(() => 0)) };
    times.set(time, made);
    return made;
  };
  for (const { state, from, until, to, plants } of stays) {
    if (!(from >= 0 && until > from && until < Number.POSITIVE_INFINITY)) throw new DomainError('survival/not-a-time', 'a stay begins at 0 or later and ends after it began', { from, until });
    refuseUnlessPlants(plants);
    of(from).entered[at(state)]! += plants;
    of(until).left[at(state)]! += plants;
    if (to !== undefined) of(until).moved[at(state)]![at(to)]! += plants;
  }
  return times;
}

/** Chance to be in `to` after the step of somebody in `from` before it. */
function stepShare(atRisk: readonly number[], moved: Changes['moved'], from: number, to: number): number {
  const risk = atRisk[from]!;
  const gone = moved[from]!.reduce((sum, n, target) => sum + (target === from ? 0 : n), 0);
  if (risk <= 0) return from === to ? 1 : 0;
  return from === to ? Math.max(0, 1 - gone / risk) : moved[from]![to]! / risk;
}

/** (I + dA)' C (I + dA) and, added, what the step itself is uncertain by: multinomial in each state. */
function nextCovariance(before: readonly (readonly number[])[], shares: readonly number[], atRisk: readonly number[], moved: Changes['moved']): number[][] {
  const step = shares.map((_, from) => shares.map((_share, to) => stepShare(atRisk, moved, from, to)));
  const half = before.map((row) => step.map((_, k) => row.reduce((sum, value, j) => sum + value * step[j]![k]!, 0)));
  return step.map((_, i) =>
    step.map((_row, k) => {
      const carried = half.reduce((sum, row, j) => sum + step[j]![i]! * row[k]!, 0);
      const added = shares.reduce((sum, share, from) => {
        const risk = atRisk[from]!;
        return risk <= 0 ? sum : sum + (share * share * (step[from]![i]! * ((i === k ? 1 : 0) - step[from]![k]!))) / risk;
      }, 0);
      return carried + added;
    }),
  );
}

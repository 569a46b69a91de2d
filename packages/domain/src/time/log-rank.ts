import { chiSquareTail } from '../distribution/chi-square-tail.ts';
import { DomainError } from '../errors.ts';
import { solved } from '../matrix/cholesky.ts';
import { type Followed, momentsOf } from './followed.ts';

export interface LogRankGroup {
  /** Events seen in the group. */
  readonly observed: number;
  /** Events it would have had if groups did not differ. */
  readonly expected: number;
}

export interface LogRank {
  readonly groups: readonly LogRankGroup[];
  readonly chiSquare: number;
  /** Groups with something to tell, less one. */
  readonly freedom: number;
  /** Chance of so large a difference or a larger one if groups did not differ. */
  readonly chance: number;
}

/** One stratum: the plants of each group, in the same order of groups everywhere. */
export type Stratum = readonly (readonly Followed[])[];

/**
 * Log-rank test: does something happen sooner in one group than in another?
 *
 * Groups are only compared within a stratum (a donor tree, a site), and the strata added up.
 *
 * @param strata one or more; each with the same groups, of which some may be empty
 * @throws DomainError `survival/too-few-groups` below two groups with plants at the time of an event,
 *   or when nothing happened at all
 * @throws DomainError as `momentsOf`
 *
 * Source: Mantel N (1966) Cancer Chemother. Rep. 50:163-170; Peto R, Peto J (1972) J. R. Stat. Soc. A 135:185-207; from memory.
 */
export function logRank(strata: readonly Stratum[]): LogRank {
  const groups = strata.reduce((most, stratum) => Math.max(most, stratum.length), 0);
  const [observed, expected] = [zeros(groups), zeros(groups)];
  const variance = observed.map(() => zeros(groups));
  for (const stratum of strata) addStratum(stratum, observed, expected, variance);

  const telling = observed.flatMap((_, at) => (variance[at]![at]! > 1e-12 ? [at] : []));
  if (telling.length < 2) throw new DomainError('survival/too-few-groups', 'a comparison needs two groups with plants when something happened', { groups: telling.length });
  // They add up to nothing, so the last one tells nothing new.
  const asked = telling.slice(0, -1);
  const gap = asked.map((at) => observed[at]! - expected[at]!);
  const weighed = solved(asked.map((i) => asked.map((j) => variance[i]![j]!)), gap);
  if (!weighed) throw new DomainError('survival/too-few-groups', 'these groups were never there at the same time', { groups });
  const chiSquare = gap.reduce((sum, value, at) => sum + value * weighed[at]!, 0);
  return {
    groups: observed.map((seen, at) => ({ observed: seen, expected: expected[at]! })),
    chiSquare, freedom: asked.length, chance: chiSquareTail(Math.max(0, chiSquare), asked.length),
  };
}

const zeros = (n: number): number[] => Array.from({ length: n }, () => 0);

function addStratum(stratum: Stratum, observed: number[], expected: number[], variance: number[][]): void {
  if (stratum.every((group) => group.length === 0)) return;
  const ofGroups = stratum.map((group) => (group.length === 0 ? new Map<number, never>() : new Map(momentsOf(group).map((moment) => [moment.time, moment]))));
  const here = zeros(stratum.length);
  for (const { time, events, atRisk } of momentsOf(stratum.flat())) {
    const now = ofGroups.map((moments) => moments.get(time));
    if (events > 0) {
      const shared = atRisk > 1 ? (events * (atRisk - events)) / (atRisk - 1) : 0;
      for (let i = 0; i < here.length; i += 1) {
        observed[i]! += now[i]?.events ?? 0;
        expected[i]! += (events * here[i]!) / atRisk;
        for (let j = 0; j < here.length; j += 1) variance[i]![j]! += shared * (here[i]! / atRisk) * ((i === j ? 1 : 0) - here[j]! / atRisk);
      }
    }
    for (const [at, moment] of now.entries()) if (moment) here[at]! += moment.entered - moment.events - moment.censored;
  }
}

import type { FollowedCuttings } from './cutting-history.ts';
import type { Followed } from './followed.ts';
import { stateOccupancy, type Stay } from './state-occupancy.ts';
import { twoEnds, type TwoEnded } from './two-ends.ts';

/** Cuttings of one donor tree that fared alike; `unit` is the tree, or the sticking where nobody knows it. */
export interface CuttingsOf extends FollowedCuttings {
  readonly unit: string;
}

/** Shares of all cuttings from `week` on. */
export interface RootingShares {
  /** The share rose after this week and by `week`; where in between nobody saw. */
  readonly since: number;
  readonly week: number;
  readonly rooted: number;
  readonly lost: number;
}

/** `intervals`: between looks. `days-seen`: on the day they were seen, which only can take in plants that came late. */
export type CurveMethod = 'intervals' | 'days-seen';

export const WEEK = 7;
const weekBy = (day: number): number => Math.ceil(day / WEEK);
const weekAfter = (day: number): number => Math.floor(day / WEEK);

export const cameLate = ({ from }: FollowedCuttings): boolean => from > 0;

/** Up to so large a part that came late is left out, rather than to lose what looks between others tell. */
const FEW_LATE = 0.05;

export function methodFor(rows: readonly FollowedCuttings[]): CurveMethod {
  const plantsIn = (some: readonly FollowedCuttings[]): number => some.reduce((sum, { plants }) => sum + plants, 0);
  return plantsIn(rows.filter(cameLate)) > FEW_LATE * plantsIn(rows) ? 'days-seen' : 'intervals';
}

/**
 * Shares rooted and lost over weeks since sticking. What was called, went elsewhere or still waits counts until then.
 *
 * @param rows one or more that were followed for a time
 * @returns in order of time; empty where nothing has happened
 * @throws DomainError as `twoEnds` and `stateOccupancy`
 */
export function rootingShares(rows: readonly FollowedCuttings[], method: CurveMethod): { readonly shares: RootingShares[]; readonly isConverged: boolean } {
  return method === 'intervals' ? betweenLooks(rows) : { shares: onDaysSeen(rows), isConverged: true };
}

function betweenLooks(rows: readonly FollowedCuttings[]): { shares: RootingShares[]; isConverged: boolean } {
  const { first, second, isConverged } = twoEnds(summed(rows.map(twoEnded)));
  const times = [...new Set([...first, ...second].map(({ by }) => by))].sort((a, b) => a - b);
  const upTo = (regions: typeof first, week: number): number => regions.reduce((sum, { by, share }) => (by <= week ? sum + share : sum), 0);
  const shares = times.map((week) => ({ week, since: first.find(({ by }) => by === week)?.after ?? week, rooted: upTo(first, week), lost: upTo(second, week) }));
  return { shares, isConverged };
}

function twoEnded({ end, unrootedAt, aliveAt, by, plants }: FollowedCuttings): TwoEnded {
  if (end === 'rooted') return { end: 'first', after: weekAfter(unrootedAt), by: weekBy(by), plants };
  if (end === 'lost') return { end: 'second', after: weekAfter(aliveAt), by: weekBy(by), plants };
  return { after: weekAfter(unrootedAt), notSecondAt: weekAfter(aliveAt), plants };
}

/** Rows that say the same are one, so that the work grows with weeks and not with plants. */
function summed(rows: readonly TwoEnded[]): TwoEnded[] {
  const sums = new Map<string, TwoEnded>();
  for (const row of rows) {
    const key = row.end === undefined ? `${row.after} ${row.notSecondAt}` : `${row.end} ${row.after} ${row.by}`;
    sums.set(key, { ...row, plants: row.plants + (sums.get(key)?.plants ?? 0) });
  }
  return [...sums.values()];
}

const STATES = ['waiting', 'rooted', 'lost'] as const;

/** Stays of cuttings in weeks, those that were never followed left out. */
export function staysOf(rows: readonly FollowedCuttings[]): Stay<(typeof STATES)[number]>[] {
  return rows.flatMap(({ from, by, end, plants }) => {
    const [begins, until] = [weekAfter(from), weekBy(by)];
    if (until <= begins) return [];
    return [{ state: 'waiting' as const, from: begins, until, plants, ...(end === 'rooted' || end === 'lost' ? { to: end } : {}) }];
  });
}

/** Aalen-Johansen on the weeks in which it was seen. */
export const occupancyOf = (rows: readonly FollowedCuttings[]) => {
  const stays = staysOf(rows);
  return stays.length === 0 ? [] : stateOccupancy(stays, STATES);
};

/** Shares on the days on which they were seen. */
export const onDaysSeen = (rows: readonly FollowedCuttings[]): RootingShares[] =>
  occupancyOf(rows).map(({ time, shares: [, rooted = 0, lost = 0] }) => ({ week: time, since: time, rooted, lost }));

/**
 * Cuttings still waiting and watched after so many weeks: what the curve rests on from there on. All weeks are added up once,
 * so that a thousand trays can ask of the same rows.
 *
 * @returns asked with a whole number of weeks; none are watched after the last of them
 */
export function watchedByWeek(rows: readonly FollowedCuttings[]): (week: number) => number {
  const rise: number[] = [];
  for (const { from, by, plants } of rows) {
    const [begins, ends] = [weekAfter(from), weekBy(by)];
    if (ends <= begins) continue;
    rise[begins] = (rise[begins] ?? 0) + plants;
    rise[ends] = (rise[ends] ?? 0) - plants;
  }
  let running = 0;
  const watched = Array.from(rise, (change = 0) => (running += change));
  return (week) => watched[week] ?? 0;
}

/** Weeks until roots were seen, as `logRank` and `kaplanMeier` ask for them: who is lost, called or went elsewhere was last seen without. */
export const rootingTimes = (rows: readonly FollowedCuttings[]): Followed[] =>
  staysOf(rows).map(({ from, until, to, plants }) => ({ from, until, plants, happened: to === 'rooted' }));

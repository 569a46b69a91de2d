import type { RootingCurve, RootingCurves } from '@sprigline/contract';
import { type CuttingsOf, type CuttingEnd, DomainError, logRank, rootingCurve, rootingTimes, watchedByWeek } from '@sprigline/domain';
import type { FollowedSticking } from './followed.queries.ts';

/** More curves in one picture cannot be told apart. */
export const MOST_GROUPS = 8;
/** So many numbers stand below a curve. */
const TICKS = 6;
const EVERY_WEEKS = [1, 2, 4, 8, 13, 26, 52, 104];

/** The cuttings of some stickings, each under its donor tree; where nobody knows it a sticking stands for itself. */
export const cuttingsOf = (stickings: readonly FollowedSticking[]): CuttingsOf[] =>
  stickings.flatMap(({ donorId, stickingId, followed }) => followed.map((row) => ({ ...row, unit: donorId ?? stickingId })));

/** The groups, those with the most cuttings first. */
export function curvesOf(stickings: readonly FollowedSticking[]): Pick<RootingCurves, 'groups' | 'inAll' | 'difference'> {
  const groups = [...groupedByKey(stickings).values()].map((of) => ({ of, cuttings: cuttingsOf(of) }));
  groups.sort((a, b) => plantsIn(b.cuttings) - plantsIn(a.cuttings));
  const shown = groups.slice(0, MOST_GROUPS);
  const curves = shown.map(({ of, cuttings }) => curveOf(of, cuttings));
  return { groups: curves, inAll: groups.length, difference: differenceOf(curves, shown.map(({ cuttings }) => cuttings)) };
}

function groupedByKey(stickings: readonly FollowedSticking[]): Map<string, FollowedSticking[]> {
  const groups = new Map<string, FollowedSticking[]>();
  for (const sticking of stickings) {
    const known = groups.get(sticking.key);
    if (known) known.push(sticking);
    else groups.set(sticking.key, [sticking]);
  }
  return groups;
}

function curveOf(stickings: readonly FollowedSticking[], cuttings: readonly CuttingsOf[]): RootingCurve {
  const { steps, halfOfRooting, halfOfAll, ...told } = rootingCurve(cuttings);
  const [first] = stickings;
  const ended = (end: CuttingEnd): number => plantsIn(cuttings.filter((row) => row.end === end));
  const [all, left, waiting] = [plantsIn(cuttings), ended('left'), ended('waiting')];
  const watchedAfter = watchedByWeek(cuttings);
  const seen = cuttings.flatMap(({ end, by }) => (end === 'rooted' ? [by] : []));
  return {
    key: first?.key ?? '', name: first?.name ?? '', standId: sharedBy(stickings, ({ standId }) => standId), taxonId: sharedBy(stickings, ({ taxonId }) => taxonId),
    stickings: stickings.length, donors: new Set(stickings.flatMap(({ donorId }) => donorId ?? [])).size, cuttings: all,
    rooted: ended('rooted'), lost: ended('lost'), called: ended('called'), left, waiting, undecidedShare: all > left ? waiting / (all - left) : 0,
    cameLate: plantsIn(cuttings.filter(({ from }) => from > 0)), method: told.method, isConverged: told.isConverged, limitsBy: told.limitsBy,
    steps: [...steps], watched: ticksOf(cuttings).map((week) => ({ week, cuttings: watchedAfter(week) })),
    ...(halfOfRooting && { halfOfRooting }), ...(halfOfAll && { halfOfAll }), firstRootsAfterDays: seen.length > 0 ? Math.min(...seen) : null,
  };
}

/** Whether some root sooner, tree by tree. Under half decided nobody can say. */
function differenceOf(curves: readonly RootingCurve[], groups: readonly (readonly CuttingsOf[])[]): RootingCurves['difference'] {
  if (groups.length < 2) return { kind: 'not-told', because: 'one-group' };
  if (curves.some(({ undecidedShare }) => undecidedShare > 0.5)) return { kind: 'not-told', because: 'under-half-decided' };
  const trees = [...new Set(groups.flatMap((group) => group.map(({ unit }) => unit)))];
  const strata = trees.map((tree) => groups.map((group) => rootingTimes(group.filter(({ unit }) => unit === tree))));
  try {
    const { chiSquare, freedom, chance } = logRank(strata);
    return { kind: 'told', chiSquare, freedom, chance };
  } catch (error) {
    if (error instanceof DomainError && error.code === 'survival/too-few-groups') return { kind: 'not-told', because: 'no-tree-in-two-groups' };
    throw error;
  }
}

/** Equal steps of weeks up to the last that anything was seen in. */
function ticksOf(cuttings: readonly CuttingsOf[]): number[] {
  const last = Math.ceil(cuttings.reduce((most, { by }) => Math.max(most, by), 0) / 7);
  const every = EVERY_WEEKS.find((weeks) => last / weeks <= TICKS) ?? Math.ceil(last / TICKS);
  return Array.from({ length: Math.floor(last / every) + 1 }, (_, at) => at * every);
}

const plantsIn = (rows: readonly { readonly plants: number }[]): number => rows.reduce((sum, { plants }) => sum + plants, 0);

function sharedBy<T>(list: readonly T[], of: (one: T) => string | null): string | null {
  const [first] = list;
  return first !== undefined && list.every((one) => of(one) === of(first)) ? of(first) : null;
}

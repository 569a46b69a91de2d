/** Where a place lies, and how it was carried about: a tray moves with all it holds. */
export interface PlaceInHistory {
  readonly id: string;
  /** In which place it lies now; nothing: in none. */
  readonly parentId?: string | undefined;
  readonly moves: readonly PlaceMove[];
}

export interface PlaceMove {
  readonly movedOn: string;
  readonly fromId?: string | undefined;
  readonly toId?: string | undefined;
  /** When it was written down: tells which of two moves of one day came last, and which was told first. */
  readonly writtenAt: string;
}

/** Some days at one place; `until` is the day on which it left, and nothing while it is there. */
export interface StayAt {
  readonly placeId: string;
  readonly from: string;
  readonly until?: string | undefined;
}

/** Some days at one place and in all that it lay in at the time, the innermost first. */
export interface Whereabouts {
  readonly from: string;
  readonly until?: string | undefined;
  readonly path: readonly string[];
}

/**
 * Where something was, with every place around it, from day to day.
 *
 * On the day of a move it was at both places. A place that is not known stands in none.
 *
 * @param stays in order, at the innermost places
 * @param places all that may be around, with their moves
 */
export function whereabouts(stays: readonly StayAt[], places: ReadonlyMap<string, PlaceInHistory>): Whereabouts[] {
  return stays.flatMap((stay) => outward({ from: stay.from, until: stay.until, path: [stay.placeId] }, places));
}

function outward(so: Whereabouts, places: ReadonlyMap<string, PlaceInHistory>): Whereabouts[] {
  const outermost = so.path.at(-1) ?? '';
  const place = places.get(outermost);
  if (!place) return [so];
  return lays(place).flatMap(({ from, until, parentId }) => {
    const days = shared(so, { from, until });
    if (!days) return [];
    // A ring cannot be made; if it were, one time round is enough.
    if (parentId === undefined || so.path.includes(parentId)) return [{ ...so, ...days }];
    return outward({ ...days, path: [...so.path, parentId] }, places);
  });
}

interface Lay {
  readonly from?: string | undefined;
  readonly until?: string | undefined;
  readonly parentId?: string | undefined;
}

/** In which place it lay from when to when. Where it was at first is told by the move that was written first. */
function lays({ parentId, moves }: PlaceInHistory): Lay[] {
  const first = moves.toSorted((a, b) => compare(a.writtenAt, b.writtenAt))[0];
  if (!first) return [{ parentId }];

  const inOrder = moves.toSorted((a, b) => compare(a.movedOn, b.movedOn) || compare(a.writtenAt, b.writtenAt));
  return [
    { until: inOrder[0]?.movedOn, parentId: first.fromId },
    ...inOrder.map(({ movedOn, toId }, at) => ({ from: movedOn, until: inOrder[at + 1]?.movedOn, parentId: toId })),
  ];
}

/** The days that two spans share; nothing where they share none. */
function shared(one: { from: string; until?: string | undefined }, other: { from?: string | undefined; until?: string | undefined }): { from: string; until?: string | undefined } | undefined {
  const from = other.from !== undefined && other.from > one.from ? other.from : one.from;
  const until = earlierEnd(one.until, other.until);
  return until !== undefined && until < from ? undefined : { from, until };
}

const earlierEnd = (one: string | undefined, other: string | undefined): string | undefined =>
  one === undefined ? other : other === undefined || one < other ? one : other;

const compare = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

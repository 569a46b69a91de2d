import type { Whereabouts } from './whereabouts.ts';

/** How a place is kept from a day on, until the next one of that place. */
export interface DatedRegime {
  readonly id: string;
  readonly placeId: string;
  readonly fromDay: string;
}

/** Some days under one regime; nothing: nobody told one. `until` is the day on which another began. */
export interface Exposed<R extends DatedRegime> {
  readonly from: string;
  readonly until?: string | undefined;
  readonly regime?: R | undefined;
}

/**
 * Under which regime something stood, from day to day.
 *
 * The innermost place that has one decides, as a whole: a bench with a regime of its
 * own is not read together with its house. Days on which it changed belong to what began.
 *
 * @param where it stood, in order
 * @param regimes of all places named there, in any order
 */
export function exposure<R extends DatedRegime>(where: readonly Whereabouts[], regimes: readonly R[]): Exposed<R>[] {
  const all = where.flatMap(({ from, until, path }) => {
    const here = regimes.filter(({ placeId }) => path.includes(placeId));
    const begins = [from, ...here.map(({ fromDay }) => fromDay).filter((day) => day > from && (until === undefined || day < until))];
    const days = [...new Set(begins)].sort();
    return days.map((day, at) => ({ from: day, until: days[at + 1] ?? until, regime: regimeOn(day, path, here) }));
  });
  return joined(all.filter(({ from, until }, at) => from !== until || at === all.length - 1));
}

/** The one that holds on a day: of the innermost place with one, the last that had begun. */
export function regimeOn<R extends DatedRegime>(day: string, path: readonly string[], regimes: readonly R[]): R | undefined {
  for (const placeId of path) {
    const begun = regimes.filter((regime) => regime.placeId === placeId && regime.fromDay <= day);
    const last = begun.toSorted((a, b) => (a.fromDay < b.fromDay ? 1 : -1))[0];
    if (last) return last;
  }
  return undefined;
}

/** Neighbours under the same regime are one. */
function joined<R extends DatedRegime>(all: readonly Exposed<R>[]): Exposed<R>[] {
  const kept: Exposed<R>[] = [];
  for (const next of all) {
    const last = kept.at(-1);
    if (last && last.regime?.id === next.regime?.id && last.until === next.from) kept[kept.length - 1] = { ...last, until: next.until };
    else kept.push(next);
  }
  return kept;
}

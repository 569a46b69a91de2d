/** What a choice of stops must hold. More stops never hold less. */
export type Suffices = (stops: ReadonlySet<string>) => boolean;

export interface FewestStops {
  /** In walking order. */
  readonly stops: readonly string[];
  /** False where there were too many to try: then none can be left out, but another choice might be shorter. */
  readonly isProven: boolean;
}

/** So many choices are tried; a hall of some hundred trays may need more, and gets the short walk that was found first. */
const TRIES = 20_000;

/**
 * The fewest stops of a walk that suffice; of equally many, those that come first on the walk.
 *
 * Looks for a choice of one stop, then of two, and so on, trying the first stops of the
 * walk first and leaving off wherever all that is left could not suffice. This is a covering
 * problem, for which no quick way is known that is always best; so the search has a limit.
 *
 * @param walk stops in walking order, which together suffice
 */
export function fewestStops(walk: readonly string[], suffices: Suffices): FewestStops {
  const needed = walk.filter((stop) => !suffices(new Set(walk.filter((other) => other !== stop))));
  const search = new Search(walk, new Set(needed), suffices);
  const short = withoutTheNeedless(walk, suffices);
  for (let size = needed.length; size < short.length; size += 1) {
    const found = search.ofSize(size);
    if (found) return { stops: found, isProven: true };
    if (search.tries > TRIES) return { stops: short, isProven: false };
  }
  return { stops: search.ofSize(short.length) ?? short, isProven: search.tries <= TRIES };
}

/** Leaves out, from the end of the walk on, every stop that can be spared. */
function withoutTheNeedless(walk: readonly string[], suffices: Suffices): string[] {
  const kept = new Set(walk);
  for (const stop of walk.toReversed()) {
    kept.delete(stop);
    if (!suffices(kept)) kept.add(stop);
  }
  return walk.filter((stop) => kept.has(stop));
}

class Search {
  tries = 0;

  constructor(
    private readonly walk: readonly string[],
    private readonly needed: ReadonlySet<string>,
    private readonly suffices: Suffices,
  ) {}

  /** The first choice of so many stops that suffices, if there is one within the limit. */
  ofSize(size: number, at = 0, chosen: readonly string[] = []): readonly string[] | undefined {
    this.tries += 1;
    if (this.tries > TRIES) return undefined;
    if (chosen.length === size) return this.suffices(new Set(chosen)) ? chosen : undefined;
    const stop = this.walk[at];
    if (stop === undefined || chosen.length + (this.walk.length - at) < size) return undefined;
    if (!this.suffices(new Set([...chosen, ...this.walk.slice(at)]))) return undefined;

    const withIt = this.ofSize(size, at + 1, [...chosen, stop]);
    return withIt ?? (this.needed.has(stop) ? undefined : this.ofSize(size, at + 1, chosen));
  }
}

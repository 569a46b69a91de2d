import type { BatchIdentity, Effect, Entry, Flag, FlagCode, Look, Movement } from '@sprigline/domain';

/** A batch as it stands in front of us: its plants move in and out one at a time. */
export interface Bench {
  readonly batch: BatchIdentity;
  readonly openingIsGone: boolean;
  here: number;
  /** For each plant that a look did not account for, the entry that lost it; oldest first. */
  unaccounted: string[];
  /** One plant each. */
  moved: Movement[];
  flags: Flag[];
  sights: { day: string; strength: number }[];
  rootedSeen: number | undefined;
  goneOn: number;
  everRooted: number;
  liftedOn: string[];
  notFound: number;
  heldBy: Entry[];
  unconfirmed: boolean;
  stays: { placeId: string; from: string; entryId: string }[];
  calledOn: string | undefined;
  strongLookOn: string | undefined;
  sampledOn: string | undefined;
  lookedOverOn: string | undefined;
  /** The entries that met plants too many or too few: what another order might have avoided. */
  odd: string[];
}

export const emptyBench = (batch: BatchIdentity, openingIsGone: boolean): Bench => ({
  batch,
  openingIsGone,
  here: 0,
  unaccounted: [],
  moved: [],
  flags: [],
  sights: [],
  // An empty tray has no roots in it, and everybody knows. Nobody does once its opening is withdrawn.
  rootedSeen: openingIsGone ? undefined : 0,
  goneOn: 0,
  everRooted: 0,
  liftedOn: [],
  notFound: 0,
  heldBy: [],
  unconfirmed: false,
  stays: [],
  calledOn: undefined,
  strongLookOn: undefined,
  sampledOn: undefined,
  lookedOverOn: undefined,
  odd: [],
});

/** The same batch once more, to try something on. */
export const copyOf = (bench: Bench): Bench => ({
  ...bench,
  unaccounted: [...bench.unaccounted],
  moved: [...bench.moved],
  flags: [...bench.flags],
  sights: [...bench.sights],
  stays: [...bench.stays],
  liftedOn: [...bench.liftedOn],
  odd: [...bench.odd],
});

export const STRENGTH: Readonly<Record<Look | 'opening', number>> = { look: 0, tug: 1, lifted: 2, opening: 3 };

export const rootedNow = (bench: Bench): number | undefined => {
  if (bench.batch.stage !== 'cutting') return bench.here;
  return bench.rootedSeen === undefined ? undefined : Math.min(bench.here, bench.rootedSeen);
};

export function raise(bench: Bench, code: FlagCode, entry: Entry, n?: number): void {
  bench.flags.push({ code, entryId: entry.id, day: entry.observedOn, ...(n === undefined ? {} : { n }) });
}

export function comeIn(bench: Bench, entry: Entry, n: number, effect: Effect): void {
  for (let plant = 0; plant < n; plant += 1) {
    bench.here += 1;
    bench.moved.push({ entryId: entry.id, day: entry.observedOn, effect, n: 1 });
  }
}

/** Plants that nobody knew of: first those that were missed before, newest first; the rest is found. Answers how many. */
export function turnUp(bench: Bench, entry: Entry, n: number): number {
  let found = 0;
  for (let plant = 0; plant < n; plant += 1) {
    const undoes = bench.unaccounted.pop();
    const effect = undoes === undefined ? 'found' : 'takenBack';
    if (undoes === undefined) found += 1;
    bench.here += 1;
    bench.moved.push({ entryId: entry.id, day: entry.observedOn, effect, n: 1, undoes });
  }
  return found;
}

type Detail = Pick<Movement, 'cause' | 'toStage'>;
const LOSSES: ReadonlySet<Effect> = new Set(['died', 'unaccounted', 'notRooted', 'thrownOut']);

/** `n` of those that are here go, each with the day on which it was surely still there. */
export function goOut(bench: Bench, entry: Entry, n: number, effect: Effect, look: Look, detail: Detail = {}): void {
  if (n > bench.here) throw new Error(`${entry.id}: ${n} cannot go, ${bench.here} are here`);
  const lastSeen = bench.sights.findLast((sight) => sight.strength >= STRENGTH[look])?.day;
  for (let plant = 0; plant < n; plant += 1) {
    bench.here -= 1;
    if (effect === 'unaccounted') bench.unaccounted.push(entry.id);
    const interval = LOSSES.has(effect) ? { lastSeen } : {};
    bench.moved.push({ entryId: entry.id, day: entry.observedOn, effect, n: 1, ...detail, ...interval });
  }
}

import type { Effect } from '../ledger/books.ts';
import type { CuttingBatch, CuttingEnd, CuttingMovement, FollowedCuttings, RootsToldOn } from './cutting-history.ts';

/** Cuttings without roots as far as anybody knows, that came and were looked at alike. */
interface Lot {
  readonly from: number;
  readonly unrootedAt: number;
  readonly plants: number;
}

interface Tray {
  /** Those longest there first. */
  lots: Lot[];
  /** Known to have roots, and still here as cuttings. */
  rooted: number;
  readonly batch: CuttingBatch;
}

type Step = { readonly tray: Tray; readonly day: number; readonly turn: number } & ({ readonly movement: CuttingMovement } | { readonly told: RootsToldOn });

const FROM_THE_START: readonly Effect[] = ['stuck', 'restuckIn'];
const FROM_OUTSIDE: readonly Effect[] = ['received', 'identifiedIn', 'mixedIn', 'found'];
const FROM_A_TRAY: readonly Effect[] = ['splitIn', 'givenIn'];
const TO_A_TRAY: readonly Effect[] = ['splitOut', 'givenAcross'];
const LOST: readonly Effect[] = ['died', 'unaccounted', 'thrownOut'];

/**
 * From the books of one sticking: when its cuttings rooted, each between the last look that found it without roots and
 * the first that saw them.
 *
 * A tug or a lift that says how many are rooted says of all the others that they were not; a look from above finds roots
 * where it tells of some, and says nothing of the others. Going on means roots. A count tells how many, never which: those
 * longest in the tray are taken to root first. What dies, is missing or is thrown out is taken from those without
 * roots as long as there are any. What is called had no roots on that day, and nobody knows whether it ever would have. A miscount that was taken back never happened.
 * Plants that change trays keep what is known of them, and whoever tells roots of plants that leave has seen them. Counts of a sample are not for here.
 *
 * @param batches of one sticking at the stage of cuttings, in any order
 * @returns one row for each way to have fared, in no order that means anything; plants are whole numbers above 0
 */
export function followedCuttings(batches: readonly CuttingBatch[]): FollowedCuttings[] {
  const trays = batches.map((batch): Tray => ({ lots: [], rooted: 0, batch }));
  const steps = trays.flatMap(stepsOf).sort((a, b) => a.day - b.day || a.turn - b.turn);
  const stated = new Map(batches.flatMap(({ told }) => told.filter(({ passing }) => passing).map(({ entryId, rooted }) => [entryId, rooted])));
  const walk = new Walk(stated, steps);
  for (const step of steps) walk.take(step);
  for (const tray of trays) walk.leaveWaiting(tray);
  return walk.rows();
}

/** Within a day: arrivals, what comes from other trays, deaths, what is told of roots, departures; as the books have it. */
function stepsOf(tray: Tray): Step[] {
  const movements = withoutTakenBack(tray.batch.movements).map((movement): Step => ({ tray, day: Math.max(0, movement.day), turn: turnOf(movement.effect), movement }));
  const told = tray.batch.told.filter(({ passing }) => !passing).map((one): Step => ({ tray, day: Math.max(0, one.day), turn: 3, told: one }));
  return [...movements, ...told];
}

function turnOf(effect: Effect): number {
  if (FROM_A_TRAY.includes(effect)) return 1;
  if (effect === 'died' || effect === 'unaccounted') return 2;
  return FROM_THE_START.includes(effect) || FROM_OUTSIDE.includes(effect) ? 0 : 4;
}

/** Losses that a later count took back never happened. */
export function withoutTakenBack<M extends CuttingMovement>(movements: readonly M[]): M[] {
  const back = new Map<string, number>();
  for (const { undoes, n } of movements) if (undoes !== undefined) back.set(undoes, (back.get(undoes) ?? 0) + n);
  return movements.filter(({ effect }) => effect !== 'takenBack').flatMap((movement) => {
    if (movement.effect !== 'unaccounted') return [movement];
    const undone = Math.min(movement.n, back.get(movement.entryId) ?? 0);
    back.set(movement.entryId, (back.get(movement.entryId) ?? 0) - undone);
    return movement.n > undone ? [{ ...movement, n: movement.n - undone }] : [];
  });
}

/** Plants on their way from one tray to another, under the entry that carried them. */
interface Carried {
  readonly lots: readonly Lot[];
  readonly rooted: number;
}

class Walk {
  readonly #rows = new Map<string, FollowedCuttings>();
  readonly #carried = new Map<string, Carried>();
  readonly #taken = new Set<Step>();
  readonly #departures: ReadonlyMap<string, Step>;

  constructor(private readonly stated: ReadonlyMap<string, number>, private readonly steps: readonly Step[]) {
    this.#departures = new Map(steps.flatMap((step) => ('movement' in step && TO_A_TRAY.includes(step.movement.effect) ? [[step.movement.entryId, step]] : [])));
  }

  take(step: Step): void {
    if (this.#taken.has(step)) return;
    this.#taken.add(step);
    if ('told' in step) this.#rootsTold(step.tray, step.told, step.day);
    else this.#moved(step.tray, step.movement, step.day);
  }

  leaveWaiting(tray: Tray): void {
    for (const lot of tray.lots) this.#end(lot, 'waiting', Math.max(lot.unrootedAt, tray.batch.lastSeen ?? 0));
  }

  rows(): FollowedCuttings[] {
    return [...this.#rows.values()];
  }

  #moved(tray: Tray, movement: CuttingMovement, day: number): void {
    const { effect, n, entryId } = movement;
    if (FROM_THE_START.includes(effect)) tray.lots.push({ from: 0, unrootedAt: 0, plants: n });
    else if (FROM_OUTSIDE.includes(effect)) this.#arrive(tray, n, this.stated.get(entryId) ?? 0, day);
    else if (FROM_A_TRAY.includes(effect)) this.#arriveFromTray(tray, movement, day);
    else if (TO_A_TRAY.includes(effect)) this.#carried.set(entryId, this.#depart(tray, movement, day));
    else if (LOST.includes(effect)) this.#lose(tray, movement, day);
    else if (effect === 'wentOn') this.#goOn(tray, n, day);
    else if (effect === 'notRooted' || effect === 'restuckOut') this.#leaveUnrooted(tray, n, day, effect === 'notRooted' ? 'called' : 'left');
    else for (const lot of this.#depart(tray, movement, day).lots) this.#end(lot, 'left', day);
  }

  #arrive(tray: Tray, n: number, rooted: number, day: number): void {
    tray.rooted += Math.min(n, rooted);
    if (n > rooted) tray.lots.push({ from: day, unrootedAt: day, plants: n - rooted });
  }

  /** The entry that brought them took them from a tray of this sticking; if that is still to come today, it comes first, with all of that tray's day. */
  #arriveFromTray(tray: Tray, { entryId, n }: CuttingMovement, day: number): void {
    const departure = this.#departures.get(entryId);
    if (departure) for (const step of this.steps) if (step.tray === departure.tray && step.day === departure.day) this.take(step);
    const carried = this.#carried.get(entryId);
    this.#carried.delete(entryId);
    tray.lots.push(...(carried?.lots ?? []));
    tray.rooted += carried?.rooted ?? 0;
    const short = n - (carried ? plantsIn(carried.lots) + carried.rooted : 0);
    if (short > 0) this.#arrive(tray, short, 0, day);
  }

  #rootsTold(tray: Tray, { rooted, look }: RootsToldOn, day: number): void {
    this.#root(tray, rooted - tray.rooted, day);
    if (look === 'tug' || look === 'lifted') tray.lots = tray.lots.map((lot) => ({ ...lot, unrootedAt: Math.max(lot.unrootedAt, day) }));
  }

  #goOn(tray: Tray, n: number, day: number): void {
    this.#root(tray, n - tray.rooted, day);
    tray.rooted = Math.max(0, tray.rooted - n);
  }

  #root(tray: Tray, n: number, day: number): void {
    for (const lot of takeLots(tray, n)) {
      this.#end(lot, 'rooted', day);
      tray.rooted += lot.plants;
    }
  }

  #lose(tray: Tray, { n, lastSeen }: CuttingMovement, day: number): void {
    for (const lot of takePassing(tray, n).lots) this.#end(lot, 'lost', day, lastSeen);
  }

  #leaveUnrooted(tray: Tray, n: number, day: number, end: CuttingEnd): void {
    for (const lot of takePassing(tray, n).lots) this.#end({ ...lot, unrootedAt: Math.max(lot.unrootedAt, day) }, end, day);
  }

  /** Roots that are told of plants that go elsewhere were seen on that day. */
  #depart(tray: Tray, { entryId, n }: CuttingMovement, day: number): Carried {
    const rooted = Math.min(n, this.stated.get(entryId) ?? 0);
    this.#root(tray, rooted - tray.rooted, day);
    return takePassing(tray, n, rooted);
  }

  /** What was seen on the very day it came under observation is taken to have happened by the next. */
  #end({ from, unrootedAt, plants }: Lot, end: CuttingEnd, day: number, lastSeen = unrootedAt): void {
    const happened = end === 'rooted' || end === 'lost';
    const aliveAt = happened ? Math.max(unrootedAt, Math.min(lastSeen, day - 1)) : Math.max(unrootedAt, day);
    const by = happened ? Math.max(day, aliveAt + 1) : aliveAt;
    const key = [from, unrootedAt, aliveAt, by, end].join(' ');
    const known = this.#rows.get(key);
    this.#rows.set(key, { from, unrootedAt, aliveAt, by, end, plants: plants + (known?.plants ?? 0) });
  }
}

const plantsIn = (lots: readonly Lot[]): number => lots.reduce((sum, { plants }) => sum + plants, 0);

/** Takes so many from the tray, as far as they go, those longest there first. */
function takeLots(tray: Tray, n: number): Lot[] {
  const taken: Lot[] = [];
  let open = n;
  while (open > 0) {
    const lot = tray.lots.shift();
    if (!lot) break;
    const plants = Math.min(open, lot.plants);
    taken.push({ ...lot, plants });
    if (lot.plants > plants) tray.lots.unshift({ ...lot, plants: lot.plants - plants });
    open -= plants;
  }
  return taken;
}

/** As many rooted ones as were told; where nothing was, those without roots first. */
function takePassing(tray: Tray, n: number, rootedOfThem = 0): Carried {
  const told = Math.min(rootedOfThem, tray.rooted);
  const lots = takeLots(tray, n - told);
  const rooted = Math.min(tray.rooted, n - plantsIn(lots));
  tray.rooted -= rooted;
  return { lots, rooted };
}

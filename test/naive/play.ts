import type { Entry } from '@sprigline/domain';
import { type Bench, comeIn, copyOf, goOut, raise, STRENGTH, turnUp } from './bench.ts';
import { check, hearOfRoots, setBooks } from './count.ts';
import type { Count, Deed, Fact, Leave } from './facts.ts';
import { minuteOf } from './order.ts';

/** Plays facts in the order given. */
export function play(bench: Bench, facts: readonly Fact[]): void {
  const parts = new Map<Fact, Part>();
  facts.forEach((fact, index) => {
    if (!isReading(fact)) return parts.has(fact) || playOne(bench, fact);
    if (!parts.has(fact)) shareOut(readingsFrom(bench, facts.slice(index)), parts);
    playReading(bench, fact, fact.deed, parts.get(fact) ?? NOTHING);
  });
}

/** What one of several readings of the same day is good for. */
interface Part {
  readonly books: boolean;
  readonly informs: boolean;
  readonly sees: boolean;
  readonly flagged: boolean;
}

const NOTHING: Part = { books: false, informs: false, sees: false, flagged: false };

interface Reading extends Fact {
  readonly deed: Count;
}
const isReading = (fact: Fact): fact is Reading => fact.deed.does === 'count';

interface Readings {
  readonly counts: readonly Reading[];
  /** Checks that stand between them and would have booked nothing: they see what the counts see. */
  readonly between: readonly Fact[];
}

/** The whole counts from here on until something else is booked; found by trying. */
function readingsFrom(bench: Bench, facts: readonly Fact[]): Readings {
  let trial = copyOf(bench);
  let readings: Readings = { counts: [], between: [] };
  let since: Fact[] = [];
  for (const fact of facts) {
    if (isReading(fact)) {
      readings = { counts: [...readings.counts, fact], between: [...readings.between, ...since] };
      since = [];
      trial = copyOf(bench);
      const { entry, deed } = bookingOf(readings.counts) ?? fact;
      setBooks(trial, entry, deed);
      continue;
    }
    const already = trial.moved.length;
    playOne(trial, fact);
    if (trial.moved.length > already) break;
    if (fact.deed.does === 'check') since.push(fact);
  }
  return readings;
}

function shareOut({ counts, between }: Readings, parts: Map<Fact, Part>): void {
  const booking = bookingOf(counts);
  const agree = doAgree(counts);
  const informing = agree ? strongest(counts.filter(({ deed }) => deed.rooted !== undefined)) : booking;
  for (const one of between) parts.set(one, NOTHING);
  for (const one of counts) {
    const books = one === booking;
    parts.set(one, { books, informs: one === informing, sees: agree || books, flagged: books && !agree });
  }
}

const doAgree = (counts: readonly Reading[]): boolean => counts.every(({ deed }) => deed.alive === counts[0]?.deed.alive);

/** Readings that agree are one, which the first of them books. */
const bookingOf = (counts: readonly Reading[]): Reading | undefined => (doAgree(counts) ? counts[0] : strongest(counts));

/** The strongest look, then the last in order. */
const strongest = (readings: readonly Reading[]): Reading | undefined =>
  readings.findLast(({ deed }) => readings.every((other) => STRENGTH[other.deed.look] <= STRENGTH[deed.look]));

function playReading(bench: Bench, { entry }: Fact, deed: Count, part: Part): void {
  if (part.books) setBooks(bench, entry, deed);
  if (part.informs) hearOfRoots(bench, entry, deed.rooted);
  if (part.sees) bench.sights.push({ day: entry.observedOn, strength: STRENGTH[deed.look] });
  bench.unconfirmed = false;
  bench.notFound = 0;
  if (part.flagged) raise(bench, 'two-readings', entry);
}

function playOne(bench: Bench, fact: Fact): void {
  const { entry, deed } = fact;
  if (fact.disturbs && bench.heldBy.some((hold) => !saysItself(entry, hold))) raise(bench, 'held-moved', entry);
  if (deed.does === 'arrive') arrive(bench, fact, deed);
  if (deed.does === 'leave') leave(bench, fact, deed);
  if (deed.does === 'check') check(bench, entry, deed);
  if (deed.does === 'hold') bench.heldBy = [...bench.heldBy, entry];
  if (deed.does === 'release') bench.heldBy = bench.heldBy.filter(({ id }) => deed.hold !== undefined && id !== deed.hold);
  if (deed.does === 'carry') bench.stays.push({ placeId: deed.placeId, from: entry.observedOn, entryId: entry.id });
  if (deed.does === 'find') {
    const found = turnUp(bench, entry, deed.n);
    if (found > 0) raise(bench, 'found-told', entry, found);
  }
}

/** Two numbered lines of one act, at one moment of one day: the plants went first, and were held where they came to. */
function saysItself(went: Entry, hold: Entry): boolean {
  if (hold.saying.kind !== 'held' || went.line === undefined || hold.line === undefined) return false;
  const act = (entry: Entry) => [entry.observedOn, entry.workdayId, minuteOf(entry)].join(' ');
  return act(went) === act(hold) && went.line < hold.line;
}

function arrive(bench: Bench, { entry, isOpening }: Fact, deed: Extract<Deed, { does: 'arrive' }>): void {
  const { rootedSeen } = bench;
  bench.rootedSeen = rootedSeen === undefined || deed.rooted === undefined ? undefined : rootedSeen + deed.rooted;
  bench.everRooted = Math.max(bench.everRooted, (bench.rootedSeen ?? 0) + bench.goneOn);
  comeIn(bench, entry, deed.n, deed.effect);
  if (deed.effect === 'givenIn') bench.unconfirmed = true;
  if (!isOpening) return;
  bench.sights.push({ day: entry.observedOn, strength: STRENGTH.opening });
  bench.stays.push({ placeId: bench.batch.openingPlaceId, from: entry.observedOn, entryId: entry.id });
}

function leave(bench: Bench, { entry }: Fact, deed: Leave): void {
  const missing = Math.max(0, deed.n - bench.here);
  const found = turnUp(bench, entry, missing);
  if (missing > 0) bench.odd.push(entry.id);
  if (found > 0) raise(bench, bench.openingIsGone ? 'opening-withdrawn' : 'took-more', entry, found);

  goOut(bench, entry, deed.n, deed.effect, 'look', { cause: deed.cause, toStage: deed.toStage });
  if (deed.effect === 'notRooted') bench.calledOn = entry.observedOn;
  if (deed.isLift === true) bench.liftedOn.push(entry.observedOn);
  if (deed.effect === 'wentOn') bench.goneOn += deed.n;
  bench.everRooted = Math.max(bench.everRooted, bench.goneOn);
  const tookRoots = deed.effect === 'wentOn' ? deed.n : (deed.rooted ?? 0);
  if (tookRoots === 'unknown') bench.rootedSeen = undefined;
  else if (bench.rootedSeen !== undefined) bench.rootedSeen = Math.max(0, bench.rootedSeen - tookRoots);
}

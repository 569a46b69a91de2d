import type { Entry } from '@sprigline/domain';
import { type Bench, goOut, raise, rootedNow, STRENGTH, turnUp } from './bench.ts';
import type { Count, Deed } from './facts.ts';
import { daysBetween } from './order.ts';

/** The books are set to what was counted. */
export function setBooks(bench: Bench, entry: Entry, count: Count): void {
  let missing = Math.max(0, bench.here - count.alive);
  const over = Math.max(0, count.alive - bench.here);
  let beyond = 0;
  for (const dead of count.dead) {
    const died = Math.min(dead.n, missing);
    goOut(bench, entry, died, 'died', count.look, { cause: dead.cause });
    missing -= died;
    beyond += dead.n - died;
  }
  if (beyond > 0) raise(bench, 'dead-beyond-shortfall', entry, beyond);

  const notRooted = callsTheTray(bench, entry, count) ? Math.max(0, missing - (rootedNow(bench) ?? 0)) : 0;
  goOut(bench, entry, missing - notRooted, 'unaccounted', count.look);
  goOut(bench, entry, notRooted, 'notRooted', count.look);
  if (notRooted > 0) raise(bench, 'called-by-count', entry, notRooted);
  if (missing > notRooted || over > 0) bench.odd.push(entry.id);

  const found = turnUp(bench, entry, over);
  if (found > 0) raise(bench, 'found-by-count', entry, found);
}

/** None left in a tray of cuttings within a week of lifting from it: it was emptied at the verdict. */
function callsTheTray(bench: Bench, entry: Entry, count: Count): boolean {
  if (count.alive > 0 || bench.batch.stage !== 'cutting') return false;
  const called = bench.liftedOn.some((day) => daysBetween(day, entry.observedOn) <= 7);
  if (called) bench.calledOn = entry.observedOn;
  return called;
}

/** What one look tells of roots. Fewer than were ever known is an error of somebody: then nobody knows. */
export function hearOfRoots(bench: Bench, entry: Entry, rooted: number | undefined): void {
  if (rooted === undefined || bench.batch.stage !== 'cutting') return;
  const fell = rooted + bench.goneOn < bench.everRooted;
  if (fell) raise(bench, 'rooted-fell', entry);
  bench.rootedSeen = fell ? undefined : rooted;
  bench.everRooted = Math.max(bench.everRooted, rooted + bench.goneOn);
}

/** Trees at a site: only the dead are lost, and those missed twice running. */
export function check(bench: Bench, entry: Entry, seen: Extract<Deed, { does: 'check' }>): void {
  const dead = seen.dead.reduce((sum, one) => sum + one.n, 0);
  const told = seen.alive + dead + seen.notFound + seen.notLooked;
  const over = Math.max(0, told - bench.here);
  const all = bench.here + over;
  const found = turnUp(bench, entry, over);
  if (found > 0) raise(bench, 'found-by-count', entry, found);
  if (over > 0) bench.odd.push(entry.id);

  for (const one of seen.dead) goOut(bench, entry, one.n, 'died', 'look', { cause: one.cause });
  if (seen.alive + dead + seen.notFound > 0) {
    const twice = Math.min(bench.notFound, seen.notFound);
    goOut(bench, entry, twice, 'unaccounted', 'look');
    if (twice > 0) raise(bench, 'not-found-twice', entry, twice);
    bench.notFound = seen.notFound - twice;
  }
  if (seen.notLooked === 0 && seen.notFound === 0 && seen.alive + dead === all) {
    bench.sights.push({ day: entry.observedOn, strength: STRENGTH.look });
  }
}

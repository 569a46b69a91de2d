import { daysBetween } from './calendar-day.ts';
import type { Dead, Look } from './entry.ts';
import type { Fact } from './fact.ts';
import { book, flag, type Ledger, wonderAt } from './ledger.ts';
import { withNewest } from './newest-first.ts';
import { rootedNow } from './rooted.ts';

/** Within a week of its lift a tray found empty was called; later than that nobody can say so for the person. */
const DAYS_FROM_LIFT_TO_VERDICT = 7;

type Loss = 'died' | 'unaccounted' | 'notRooted' | 'thrownOut';

/** Books a loss with the day since which it may have happened. */
export const lose = (ledger: Ledger, fact: Fact, effect: Loss, n: number, look: Look, cause?: string): Ledger =>
  book(ledger, fact, effect, n, { cause, lastSeen: ledger.sights.atLeast[look] });

/** Nobody knows what became of them: they are the first to be taken back when plants turn up. */
export function loseTrack(ledger: Ledger, fact: Fact, n: number, look: Look): Ledger {
  if (n === 0) return ledger;

  const { entryId } = fact;
  return { ...lose(ledger, fact, 'unaccounted', n, look), missing: withNewest(ledger.missing, { entryId, n }) };
}

/** Books the listed dead one cause after the other, but no more than `atMost` of them. */
export function buryListed(ledger: Ledger, fact: Fact, dead: readonly Dead[], atMost: number, look: Look): Ledger {
  let buried = ledger;
  let room = atMost;
  for (const { n, cause } of dead) {
    buried = lose(buried, fact, 'died', Math.min(n, room), look, cause);
    room -= Math.min(n, room);
  }
  return buried;
}

/** A count left these without a word. */
export function comeUpShort(ledger: Ledger, fact: Fact, n: number, look: Look): Ledger {
  return wonderAt(loseTrack(ledger, fact, n, look), fact, n);
}

/**
 * None are left. Soon after a lift this is the verdict on the tray: what had not
 * rooted is over, and only plants known to have roots are missed.
 */
export function countNone(ledger: Ledger, fact: Fact, look: Look): Ledger {
  if (!isVerdict(ledger, fact.day)) return comeUpShort(ledger, fact, ledger.balance, look);

  const rooted = rootedNow(ledger) ?? 0;
  const unrooted = ledger.balance - rooted;
  const missed = comeUpShort(ledger, fact, rooted, look);
  const called = lose(missed, fact, 'notRooted', unrooted, look);
  return flag({ ...called, calledOn: fact.day }, fact, 'called-by-count', unrooted);
}

const isVerdict = ({ batch, liftedOn }: Ledger, day: string): boolean =>
  batch.stage === 'cutting' &&
  liftedOn !== undefined &&
  daysBetween(liftedOn, day) <= DAYS_FROM_LIFT_TO_VERDICT;

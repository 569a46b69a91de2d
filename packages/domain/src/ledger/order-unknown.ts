import { bookFact } from './book-fact.ts';
import { countDead } from './count-dead.ts';
import type { BookingFact, Count } from './fact.ts';
import type { Ledger } from './ledger.ts';
import { openReading } from './reading.ts';

/** Orders are tried one by one up to so many facts; past it their number leaves no room for trying. */
const FACTS_TRIED_IN_EVERY_ORDER = 12;

/**
 * Whether the books of a day close in another order of its facts, while they do not in ours.
 *
 * @param before the books before those facts of the day whose minute nobody told
 * @param facts those facts, arrivals left out: these stay at the start of the day
 * @param after the books after them in the order we chose
 */
export function isOrderUnknown(before: Ledger, facts: readonly BookingFact[], after: Ledger): boolean {
  if (after.discrepancy === before.discrepancy) return false;
  return facts.length > FACTS_TRIED_IN_EVERY_ORDER || closesInSomeOrder(before, facts);
}

function closesInSomeOrder(before: Ledger, facts: readonly BookingFact[]): boolean {
  const deadEnds = new Set<string>();

  const closesFrom = (ledger: Ledger, left: readonly BookingFact[]): boolean => {
    if (left.length === 0) return ledger.discrepancy === before.discrepancy;

    const crossing = whatMatters(ledger, left);
    if (deadEnds.has(crossing)) return false;
    deadEnds.add(crossing);
    return left.some((fact) => {
      const next = bookFact(ledger, fact);
      const rest = left.filter((other) => other !== fact);
      return mayStillClose(next, before.discrepancy, fact.day, rest) && closesFrom(next, rest);
    });
  };
  return closesFrom(before, facts);
}

/** A gap stays open, unless it lies at a count that a further reading can overrule. */
function mayStillClose(ledger: Ledger, closed: number, day: string, rest: readonly BookingFact[]): boolean {
  if (ledger.discrepancy === closed) return true;

  const open = openReading(ledger, day);
  if (open?.before.discrepancy !== closed) return false;
  return [open.best, ...rest].some((fact) => fact.act === 'counted' && couldFit(fact, open.before.balance));
}

/** Whether a count leaves nothing to wonder at. One of none may be a verdict: only booking it tells. */
const couldFit = ({ alive, dead }: Count, balance: number): boolean =>
  alive === 0 || (alive <= balance && balance - alive <= countDead(dead));

/** Two ways to the same of these fare alike from there: the rest of the books cannot open a gap on this day. */
function whatMatters(ledger: Ledger, left: readonly BookingFact[]): string {
  const { balance, notFound, roots, liftedOn } = ledger;
  const open = left[0] && openReading(ledger, left[0].day);
  const reading = open && [open.before.balance, open.best.entryId, open.differ || open.first.entryId];
  return JSON.stringify([left.map(({ entryId }) => entryId), balance, notFound, roots.seen?.n, liftedOn, reading]);
}

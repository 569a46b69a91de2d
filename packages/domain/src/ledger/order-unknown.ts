import { bookFact } from './book-fact.ts';
import type { BookingFact } from './fact.ts';
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
  const all = 2 ** facts.length - 1;
  const tried = new Set<string>();

  const closesFrom = (ledger: Ledger, taken: number): boolean => {
    if (taken === all) return ledger.discrepancy === before.discrepancy;

    const key = whatMatters(ledger, taken);
    if (tried.has(key)) return false;
    tried.add(key);
    return facts.some((fact, index) => {
      const bit = 1 << index;
      if (taken & bit) return false;
      const next = bookFact(ledger, fact);
      return sureDiscrepancy(next, fact.day) === before.discrepancy && closesFrom(next, taken | bit);
    });
  };
  return closesFrom(before, 0);
}

/** What a count leaves short or over is not sure until no further reading can set it right. */
const sureDiscrepancy = (ledger: Ledger, day: string): number =>
  (openReading(ledger, day)?.before ?? ledger).discrepancy;

/** Two ways to the same of these fare alike from there: the rest of the books cannot open a gap on this day. */
function whatMatters(ledger: Ledger, taken: number): string {
  const { balance, notFound, roots, liftedOn, reading, movements } = ledger;
  const open = reading && reading.movements === movements ? reading : undefined;
  const read = open && [open.first.entryId, open.best.entryId, open.differ, open.before.balance];
  return JSON.stringify([taken, balance, notFound, roots.seen?.n, liftedOn, read]);
}

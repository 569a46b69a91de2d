import { bookFact } from './book-fact.ts';
import { canBook, couldBeAnytime, type Fact } from './fact.ts';
import { flag, type Ledger } from './ledger.ts';
import { isOrderUnknown } from './order-unknown.ts';

/**
 * The books after one more day.
 *
 * Arrivals and facts with a minute keep their place; the rest of the day stands
 * in an order that we chose for want of a better one. If that order leaves
 * plants short or over and another would not, the day is flagged once.
 *
 * @param facts all of that day, in order
 */
export function bookDay(ledger: Ledger, facts: readonly Fact[]): Ledger {
  const placed = facts.filter((fact) => !couldBeAnytime(fact));
  const loose = facts.filter(couldBeAnytime);
  const before = placed.reduce(bookFact, ledger);
  const after = loose.reduce(bookFact, before);
  const last = facts.at(-1);
  return last && isOrderUnknown(before, loose.filter(canBook), after) ? flag(after, last, 'order-unknown') : after;
}

import type { FlagCode } from './books.ts';
import type { Fact } from './fact.ts';
import { book, flag, type Ledger, wonderAt } from './ledger.ts';

/**
 * There were `n` plants more than the books held. They are first those that a
 * count had missed; only what no miscount explains is a find, and is flagged.
 */
export function makeUp(ledger: Ledger, fact: Fact, n: number, code: FlagCode): Ledger {
  let made = ledger;
  let left = n;
  while (left > 0 && made.missing) {
    const { newest: loss, older } = made.missing;
    const back = Math.min(left, loss.n);
    const stillMissing = back === loss.n ? older : { newest: { ...loss, n: loss.n - back }, older };
    made = { ...book(made, fact, 'takenBack', back, { undoes: loss.entryId }), missing: stillMissing };
    left -= back;
  }
  return flag(book(made, fact, 'found', left), fact, code, left);
}

/** A surplus that nobody told, but that follows from a fact. */
export function makeUpUntold(ledger: Ledger, fact: Fact, n: number, code: FlagCode): Ledger {
  if (n <= 0) return ledger;

  return wonderAt(makeUp(ledger, fact, n, code), fact, n);
}

/** Makes sure that `n` plants are there to be taken: no fact is thrown away, and no balance falls below zero. */
export function makeRoomFor(ledger: Ledger, fact: Fact, n: number): Ledger {
  const code = ledger.openingStands ? 'took-more' : 'opening-withdrawn';
  return makeUpUntold(ledger, fact, n - ledger.balance, code);
}

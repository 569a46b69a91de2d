import { bookCheck } from './book-check.ts';
import { bookCount } from './book-count.ts';
import type { Arrival, Count, Exit, Fact } from './fact.ts';
import { book, type Ledger } from './ledger.ts';
import { lose } from './loss.ts';
import { rootsArrived, rootsLeft } from './rooted.ts';
import { OPENING_LOOK, sawAll } from './sight.ts';
import { makeRoomFor, makeUp } from './surplus.ts';

/** The books after one more fact. Carrying and holding move no plants in or out. */
export function bookFact(ledger: Ledger, fact: Fact): Ledger {
  switch (fact.act) {
    case 'arrived':
      return bookArrival(ledger, fact);
    case 'found':
      return makeUp(ledger, fact, fact.n, 'found-told');
    case 'left':
      return bookExit(ledger, fact);
    case 'counted':
      return bookCount(ledger, fact);
    case 'checked':
      return bookCheck(ledger, fact);
    default:
      return ledger;
  }
}

function bookArrival(ledger: Ledger, arrival: Arrival): Ledger {
  const { effect, n, day, entryId } = arrival;
  const arrived = rootsArrived(book(ledger, arrival, effect, n), arrival);
  const given = effect === 'givenIn' ? { ...arrived, unconfirmed: true } : arrived;
  const opens = entryId === ledger.batch.openingEntryId;
  return opens ? { ...given, sights: sawAll(given.sights, day, OPENING_LOOK) } : given;
}

function bookExit(ledger: Ledger, exit: Exit): Ledger {
  const left = rootsLeft(takeOut(makeRoomFor(ledger, exit, exit.n), exit), exit);
  const marked = withMilestone(left, exit);
  return exit.leavesNone ? bookCount(marked, noneLeft(exit)) : marked;
}

/** Whoever throws out or tells of a death looked from above, as far as we know. */
function takeOut(ledger: Ledger, exit: Exit): Ledger {
  const { effect, n, cause, toStage } = exit;
  switch (effect) {
    case 'died':
    case 'notRooted':
    case 'thrownOut':
      return lose(ledger, exit, effect, n, 'look', cause);
    default:
      return book(ledger, exit, effect, n, toStage && { toStage });
  }
}

function withMilestone(ledger: Ledger, { effect, toStage, day }: Exit): Ledger {
  if (effect === 'notRooted') return { ...ledger, calledOn: day };
  if (effect === 'wentOn' && toStage === 'liner') return { ...ledger, liftedOn: day };
  return ledger;
}

/** The count that an act which leaves none makes right after itself. */
const noneLeft = ({ entryId, day, key }: Exit): Count => ({
  act: 'counted',
  entryId,
  day,
  key,
  alive: 0,
  look: 'look',
  dead: [],
});

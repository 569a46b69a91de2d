import { countDead } from './count-dead.ts';
import type { Count } from './fact.ts';
import { flag, type Ledger } from './ledger.ts';
import { buryListed, comeUpShort, countNone } from './loss.ts';
import { readTogether } from './reading.ts';
import { rootsSeen } from './rooted.ts';
import { sawAll } from './sight.ts';
import { makeUpUntold } from './surplus.ts';

/**
 * A count of the whole batch sets the books to what was counted.
 *
 * Equal readings of one day are one: the first books, the strongest tells of
 * roots. Where they differ, the best sets the books and the others book nothing.
 */
export function bookCount(ledger: Ledger, count: Count): Ledger {
  const reading = readTogether(ledger, count);
  const { before, first, best, differ } = reading;
  const set = setBooks(before, differ ? best : first);
  const told = rootsSeen(set, differ ? best : reading.ofRoots);
  const flagged = differ ? flag(told, best, 'two-readings') : told;
  const sights = sawAll(flagged.sights, count.day, best.look);
  return {
    ...flagged,
    sights,
    notFound: 0,
    unconfirmed: false,
    reading: { ...reading, movements: flagged.movements },
  };
}

function setBooks(ledger: Ledger, count: Count): Ledger {
  const { alive, dead, look } = count;
  const short = Math.max(0, ledger.balance - alive);
  const made = makeUpUntold(ledger, count, alive - ledger.balance, 'found-by-count');
  const buried = buryListed(made, count, dead, short, look);
  // A death told before the count has lowered the books already: listed again, it is not subtracted again.
  const flagged = flag(buried, count, 'dead-beyond-shortfall', Math.max(0, countDead(dead) - short));
  return alive === 0 ? countNone(flagged, count, look) : comeUpShort(flagged, count, flagged.balance - alive, look);
}

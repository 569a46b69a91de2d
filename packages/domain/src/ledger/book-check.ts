import { countDead } from './count-dead.ts';
import type { Check } from './fact.ts';
import { flag, type Ledger } from './ledger.ts';
import { buryListed, loseTrack } from './loss.ts';
import { sawAll } from './sight.ts';
import { makeUpUntold } from './surplus.ts';

/**
 * A look at planted trees, tree by tree. Dead is dead; a tree that is not found
 * may stand in the bracken, so it stays in stock until the next check that looks
 * misses it again.
 */
export function bookCheck(ledger: Ledger, check: Check): Ledger {
  const { alive, dead, notFound, notLooked } = check;
  const deadHere = countDead(dead);
  const spoken = alive + deadHere + notFound + notLooked;
  const made = makeUpUntold(ledger, check, spoken - ledger.balance, 'found-by-count');
  const buried = buryListed(made, check, dead, deadHere, 'look');
  const looked = alive + deadHere + notFound > 0;
  const checked = looked ? missAgain(buried, check) : buried;
  // Trees that nobody spoke of were not looked at, no less than those said to be.
  const sawEveryTree = alive + deadHere === made.balance;
  return sawEveryTree ? { ...checked, sights: sawAll(checked.sights, check.day, 'look') } : checked;
}

function missAgain(ledger: Ledger, check: Check): Ledger {
  const again = Math.min(ledger.notFound, check.notFound);
  const lost = flag(loseTrack(ledger, check, again, 'look'), check, 'not-found-twice', again);
  return { ...lost, notFound: check.notFound - again };
}

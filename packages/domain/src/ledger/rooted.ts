import type { Rooted } from './books.ts';
import type { Arrival, Count, Exit } from './fact.ts';
import { flag, type Ledger } from './ledger.ts';
import { OPENING_LOOK } from './sight.ts';

const isAsked = ({ batch }: Ledger): boolean => batch.stage === 'cutting';

/** Rooted plants in the batch, never more than are there; nothing when nobody can say. */
export function rootedNow(ledger: Ledger): number | undefined {
  if (!isAsked(ledger)) return ledger.balance;
  if (ledger.roots.seen === undefined) return undefined;

  return Math.min(ledger.balance, ledger.roots.seen.n);
}

/**
 * A look told how many have roots. Roots do not go away: fewer than before means
 * that one of the two looks was wrong, and nobody knows which.
 */
export function rootsSeen(ledger: Ledger, count: Count | undefined): Ledger {
  if (!isAsked(ledger) || count?.rooted === undefined) return ledger;

  const { goneOn, ever } = ledger.roots;
  const everSeen = count.rooted + goneOn;
  if (everSeen < ever) return flag({ ...ledger, roots: { goneOn, ever } }, count, 'rooted-fell');

  const seen = { n: count.rooted, look: count.look, on: count.day };
  return { ...ledger, roots: { goneOn, ever: everSeen, seen } };
}

/** Arrivals carry the roots that were stated; without a statement nobody knows how many there are now. */
export function rootsArrived(ledger: Ledger, { entryId, day, rooted }: Arrival): Ledger {
  const { seen, goneOn, ever } = ledger.roots;
  if (!isAsked(ledger) || seen === undefined) return ledger;
  if (rooted === undefined) return { ...ledger, roots: { goneOn, ever } };

  const n = seen.n + rooted;
  const opened = entryId === ledger.batch.openingEntryId && { look: OPENING_LOOK, on: day };
  return { ...ledger, roots: { goneOn, ever: Math.max(ever, n + goneOn), seen: { ...seen, ...opened, n } } };
}

/** Going on implies roots. What is split off or given carries the roots that were stated; cut afresh, none. */
export function rootsLeft(ledger: Ledger, { effect, n, rooted }: Exit): Ledger {
  const { seen, goneOn, ever } = ledger.roots;
  switch (effect) {
    case 'wentOn': {
      const rest = seen && { ...seen, n: Math.max(0, seen.n - n) };
      const gone = goneOn + n;
      return { ...ledger, roots: { seen: rest, goneOn: gone, ever: Math.max(ever, gone + (rest?.n ?? 0)) } };
    }
    case 'splitOut':
    case 'givenAcross':
    case 'givenOut':
    case 'mixedOut':
    case 'identifiedOut': {
      const rest = seen && rooted !== undefined ? { ...seen, n: Math.max(0, seen.n - rooted) } : undefined;
      return { ...ledger, roots: { seen: rest, goneOn, ever } };
    }
    default:
      return ledger;
  }
}

export function rootedOf(ledger: Ledger): Rooted {
  const { seen, ever } = ledger.roots;
  return { now: rootedNow(ledger), ever, look: seen?.look, seenOn: seen?.on };
}
